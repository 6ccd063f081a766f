import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { cutDownFont } from '../../src/site/embeddedFonts.ts';
import { cachedPng } from '../../src/site/rasters.ts';
import { pruneCache } from '../../src/site/reportCache.ts';

const rectangle = (fill: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="20" height="10"><rect width="20" height="10" fill="${fill}"/></svg>`;
const svg = rectangle('#fff');
const days = (count: number): Date => new Date(Date.now() - count * 24 * 60 * 60 * 1000);
const newFolder = (): string => mkdtempSync(join(tmpdir(), 'rasters-'));
const digits = (letter: string): string => letter.repeat(64);

test('a raster that is asked for stays, one that nobody asked for is deleted once it is old', async () => {
  const folder = newFolder();
  const png = await cachedPng(svg, 40, { folder });
  const [name = ''] = readdirSync(folder);
  const used = join(folder, name);
  const unused = join(folder, `${digits('a')}.png.sealed`);
  writeFileSync(unused, png);
  for (const file of [used, unused]) utimesSync(file, days(100), days(100));

  expect([...(await cachedPng(svg, 40, { folder }))]).toEqual([...png]);
  expect(readdirSync(folder)).toHaveLength(2);
  expect(statSync(used).mtime.getTime()).toBeGreaterThan(days(1).getTime());

  pruneCache(folder, new Set(), days(90));
  expect(existsSync(used)).toBe(true);
  expect(existsSync(unused)).toBe(false);
});

test('reports of this build stay however old they are', () => {
  const folder = newFolder();
  const [known, unknown, fresh] = [digits('a'), digits('b'), digits('c')];
  for (const name of [`${known}.json`, `${known}.svg.json`, `${unknown}.json`, `${fresh}.json`]) {
    writeFileSync(join(folder, name), '');
    if (!name.startsWith(fresh)) utimesSync(join(folder, name), days(8), days(8));
  }
  pruneCache(folder, new Set([known]), days(7));
  expect(readdirSync(folder).sort()).toEqual([`${known}.json`, `${known}.svg.json`, `${fresh}.json`]);
});

test('only files of our own names are deleted, and never a folder', () => {
  const folder = newFolder();
  const own = [
    `${digits('a')}.json`,
    `${digits('b')}.other.json`,
    `${digits('c')}.png`,
    `${digits('d')}.json.77.0`,
  ];
  const others = ['tax-2025.pdf', 'photo.png', `${digits('e')}.pdf`, `${digits('f')}.json.bak`, digits('0')];
  for (const name of [...own, ...others]) writeFileSync(join(folder, name), 'x');
  const folders = ['sub', `${digits('1')}.json`];
  for (const name of folders) mkdirSync(join(folder, name));
  for (const name of readdirSync(folder)) utimesSync(join(folder, name), days(1000), days(1000));
  pruneCache(folder, new Set(), days(7));
  expect(readdirSync(folder).sort()).toEqual([...others, ...folders].sort());
});

describe('a raster on the disk is drawn anew', () => {
  test.each([
    ['emptied', (file: string) => truncateSync(file, 0)],
    ['cut short', (file: string) => truncateSync(file, statSync(file).size - 1)],
    [
      'changed in one bit',
      (file: string) => {
        const bytes = readFileSync(file);
        const at = bytes.length - 20;
        bytes[at] = (bytes[at] ?? 0) ^ 4;
        writeFileSync(file, bytes);
      },
    ],
  ])('that was %s', async (_what, change) => {
    const folder = newFolder();
    const png = await cachedPng(svg, 40, { folder });
    const [name = ''] = readdirSync(folder);
    change(join(folder, name));
    expect([...(await cachedPng(svg, 40, { folder }))]).toEqual([...png]);
    expect([...(await cachedPng(svg, 40, { folder }))]).toEqual([...png]);
  });

  test('and exchanged for another one', async () => {
    const folder = newFolder();
    const white = await cachedPng(svg, 40, { folder });
    const [first = ''] = readdirSync(folder);
    const black = await cachedPng(rectangle('#000'), 40, { folder });
    const second = readdirSync(folder).find((name) => name !== first) ?? '';
    renameSync(join(folder, first), join(folder, 'aside'));
    renameSync(join(folder, second), join(folder, first));
    renameSync(join(folder, 'aside'), join(folder, second));
    expect([...(await cachedPng(svg, 40, { folder }))]).toEqual([...white]);
    expect([...(await cachedPng(rectangle('#000'), 40, { folder }))]).toEqual([...black]);
    expect([...white]).not.toEqual([...black]);
  });
});

test('fonts for drawings that were cut short, exchanged or deleted are made again', async () => {
  const folder = newFolder();
  const made = await cutDownFont('sans', 'plain', folder);
  const [file = ''] = readdirSync(folder);
  const whole = readFileSync(join(folder, file));
  expect(whole.equals(made)).toBe(true);
  truncateSync(join(folder, file), 100);
  expect(Buffer.from(await cutDownFont('sans', 'plain', folder)).equals(whole)).toBe(true);
  await cutDownFont('sans-600', 'plain', folder);
  const other = readdirSync(folder).find((name) => name !== file) ?? '';
  renameSync(join(folder, other), join(folder, file));
  expect(Buffer.from(await cutDownFont('sans', 'plain', folder)).equals(whole)).toBe(true);
  rmSync(join(folder, file));
  expect(Buffer.from(await cutDownFont('sans', 'plain', folder)).equals(whole)).toBe(true);
});
