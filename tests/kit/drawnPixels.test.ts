import { expect, test } from 'vitest';
import { drawPixels, giveBack } from '../../src/site/drawPixels.ts';

const drawing = (inside: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="80" height="30" viewBox="0 0 80 30"><rect width="80" height="30" fill="#faf8f2"/>${inside}</svg>`;
const line = (x: number): string => `<g fill="#1d2125" font-size="20"><text x="${x}" y="20">Heron</text></g>`;

function rowsOf(svg: string): readonly (readonly number[])[] {
  const { width, height, rgba } = drawPixels(svg, 80);
  return Array.from({ length: height }, (_, y) =>
    Array.from({ length: width }, (_, x) => rgba[(y * width + x) * 4] ?? NaN),
  );
}

test('of letters that reach over an edge the rest stands where it would', () => {
  const whole = rowsOf(drawing(line(10)));
  expect(Math.min(...whole.flat())).toBe(0x1d);
  for (const [moved, from] of [
    [-14, 24],
    [50, -40],
  ] as const) {
    const cut = rowsOf(drawing(line(moved)));
    for (const [y, row] of cut.entries())
      expect(row).toEqual(row.map((_, x) => whole[y]?.[x + from] ?? 0xfa));
  }
});

test('ink covers by fifteenths what lies there, on one paper and on several', () => {
  const half = '<rect x="24" width="56" height="30" fill="#2f6f4f"/>';
  const [onPaper, onBoth] = [rowsOf(drawing(line(10))), rowsOf(drawing(half + line(10)))];
  for (const [y, row] of onPaper.entries())
    for (const [x, red] of row.entries()) {
      const step = Math.round(((0xfa - red) * 15) / (0xfa - 0x1d));
      const under = x < 24 ? 0xfa : 0x2f;
      expect(onBoth[y]?.[x]).toBe(Math.round(under + ((0x1d - under) * step) / 15));
    }
});

test('pixels that are given back hold nothing any more', () => {
  const pixels = drawPixels(drawing(line(10)), 80);
  expect(pixels.rgba).toHaveLength(80 * 30 * 4);
  giveBack(pixels);
  expect(pixels.rgba).toHaveLength(0);
  giveBack(pixels);
});
