import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { qrCode } from '../../src/kit/qrCode.ts';
import { drawPixels } from '../../src/site/rasters.ts';

/** What a scanner reads in a QR code (jsQR 1.4.0), drawn some px wide. */
function scanned(svg: string, size: number): string | null {
  const { width, height, rgba } = drawPixels(svg, size);
  return jsQR(new Uint8ClampedArray(rgba), width, height)?.data ?? null;
}

test.each([
  'https://example.test/reports/a/',
  'https://golf.example/a-long-folder/of-tests/reports/eight-golfers-six-heads/',
  `https://golf.example/reports/${'long-slug-'.repeat(8)}end/`,
  'https://golf.example/tests/reports/%C3%A4hnlich/?a=1&b=2',
])('a scanner reads the very address: %s', (address) => {
  const svg = qrCode(address, `QR code of ${address}`);
  for (const size of [132, 400]) expect(scanned(svg, size)).toBe(address);
  // Black and white whatever the theme, with four modules of white around (ISO/IEC 18004).
  expect([...new Set(svg.match(/fill="[^"]*"/g))]).toEqual(['fill="#ffffff"', 'fill="#000000"']);
});
