import { existsSync, mkdtempSync, readdirSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { cachedPng } from '../../src/site/rasters.ts';
import { pruneCache } from '../../src/site/reportCache.ts';

const svg =
  '<svg xmlns="http://www.w3.org/2000/svg" width="20" height="10"><rect width="20" height="10" fill="#fff"/></svg>';
const days = (count: number): Date => new Date(Date.now() - count * 24 * 60 * 60 * 1000);

test('a raster that is asked for stays, one that nobody asked for is deleted once it is old', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'rasters-'));
  const png = await cachedPng(svg, 40, folder);
  const [name = ''] = readdirSync(folder);
  const used = join(folder, name);
  const unused = join(folder, 'unused.png');
  writeFileSync(unused, png);
  for (const file of [used, unused]) utimesSync(file, days(100), days(100));

  expect([...(await cachedPng(svg, 40, folder))]).toEqual([...png]);
  expect(readdirSync(folder).sort()).toEqual([name, 'unused.png'].sort());
  expect(statSync(used).mtime.getTime()).toBeGreaterThan(days(1).getTime());

  pruneCache(folder, new Set(), days(90));
  expect(existsSync(used)).toBe(true);
  expect(existsSync(unused)).toBe(false);
});

test('reports of this build stay however old they are', () => {
  const folder = mkdtempSync(join(tmpdir(), 'reports-'));
  for (const name of ['known.json', 'known.svg.json', 'unknown.json', 'fresh.json']) {
    writeFileSync(join(folder, name), '');
    if (name !== 'fresh.json') utimesSync(join(folder, name), days(8), days(8));
  }
  pruneCache(folder, new Set(['known']), days(7));
  expect(readdirSync(folder).sort()).toEqual(['fresh.json', 'known.json', 'known.svg.json']);
});
