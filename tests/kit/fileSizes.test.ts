import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { encodePng } from '../../src/kit/encodePng.ts';
import { withFileSizes } from '../../src/site/fileSizes.ts';

const folder = mkdtempSync(join(tmpdir(), 'straightface-sizes-'));
mkdirSync(join(folder, 'charts'));
const png = encodePng({ width: 30, height: 20, rgba: new Uint8Array(30 * 20 * 4).fill(255) });
writeFileSync(join(folder, 'charts/apart.png'), png);
writeFileSync(join(folder, 'charts/apart.svg'), ' '.repeat(8_400));
writeFileSync(join(folder, 'kit.zip'), new Uint8Array(1_260_000));
const room = (path: string): string => `<span data-size-of="${path}"></span>`;

test('a page says how large what it offers has become', () => {
  expect(withFileSizes(`PNG${room('charts/apart.png')} ZIP${room('kit.zip')}.`, folder)).toBe(
    'PNG<span data-size-of="charts/apart.png">, 30 × 20 px, 1 kB</span> ZIP<span data-size-of="kit.zip">, 1.3 MB</span>.',
  );
  expect(withFileSizes(room('charts/apart.svg'), folder)).toContain('>, 8 kB<');
});

test('of what is not there it says nothing', () => {
  expect(withFileSizes(room('charts/none.png'), folder)).toBe(room('charts/none.png'));
});
