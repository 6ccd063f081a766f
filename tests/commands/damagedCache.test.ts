import { cpSync, existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { buildSite } from '../../src/commands/buildSite.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { writeBenchContent } from '../bench/content.ts';
import { cacheFiles, cacheKinds, damageFiles, damages, kindOf, readBefore } from '../bench/damage.ts';
import { foldersFor, hashes, newFolder } from './builds.ts';

const said: string[] = [];
const write = (text: string): void => void said.push(text);
const terminal = { write, writeError: write, colour: false, width: 110 };

// All files with all damages are tried by `tests/bench/damagedCaches.ts`; here each file has one of them.
describe('a cache with every file damaged', async () => {
  const contentDir = newFolder('content');
  writeBenchContent(contentDir, 1);
  const { out: outDir, cache } = foldersFor(contentDir);
  const before = process.env['CACHE_DIR'];
  const build = async (): Promise<boolean> => {
    process.env['CACHE_DIR'] = cache;
    try {
      return (await buildSite({ contentDir, outDir, terminal })).built;
    } finally {
      if (before === undefined) delete process.env['CACHE_DIR'];
      else process.env['CACHE_DIR'] = before;
    }
  };
  const isBuilt = await build();
  const whole = hashes(outDir);
  const kept = `${cache}-kept`;
  cpSync(cache, kept, { recursive: true, preserveTimestamps: true });
  const all = cacheFiles(kept);

  test('is made by a build, and every file of it is of a kind that is tried', () => {
    expect(isBuilt, said.join('')).toBe(true);
    expect(all.filter((path) => kindOf(path) === null)).toEqual([]);
    expect(new Set(all.map(kindOf))).toEqual(new Set(cacheKinds));
  });

  test.each(cacheKinds)('%s: the site is the same bytes', async (kind) => {
    const random = seededRandom(kind);
    const paths = all.filter((path) => kindOf(path) === kind);
    rmSync(cache, { recursive: true });
    cpSync(kept, cache, { recursive: true, preserveTimestamps: true });
    for (const name of readBefore(kind)) rmSync(join(cache, name), { recursive: true });
    damageFiles(cache, paths, (index) => damages[index % damages.length] ?? 'flipped', random);
    expect(await build(), said.join('')).toBe(true);
    expect(hashes(outDir)).toEqual(whole);
    expect(existsSync(join(cache, 'pages.list'))).toBe(true);
  });
});
