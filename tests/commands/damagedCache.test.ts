import { cpSync, existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../src/stats/random.ts';
import { writeBenchContent } from '../bench/content.ts';
import {
  cacheFiles,
  cacheKinds,
  damageFiles,
  damages,
  kindOf,
  readBefore,
  type CacheKind,
} from '../bench/damage.ts';
import { build, foldersFor, hashes, newFolder } from './builds.ts';

// All files with all damages are tried by `tests/bench/damagedCaches.ts`; here each file has one of them.
describe('a cache with every file damaged', () => {
  const content = newFolder('content');
  writeBenchContent(content, 1);
  const folders = foldersFor(content);
  const { cache, out } = folders;
  const first = build(folders);
  const whole = hashes(out);
  const kept = `${cache}-kept`;
  cpSync(cache, kept, { recursive: true, preserveTimestamps: true });
  const all = cacheFiles(kept);

  test('is made by a build, and every file of it is of a kind that is tried', () => {
    expect(first.status, first.said).toBe(0);
    expect(all.filter((path) => kindOf(path) === null)).toEqual([]);
    expect(new Set(all.map(kindOf))).toEqual(new Set(cacheKinds));
  });

  // What is read together is damaged together: behind a damaged report nobody would ask for its drawings.
  const readTogether: readonly (readonly CacheKind[])[] = [
    ['lists', 'records'],
    ['drawings', 'other units', 'rasters'],
    ['reports', 'fonts'],
  ];

  test('all kinds are damaged', () => {
    expect(new Set(readTogether.flat())).toEqual(new Set(cacheKinds));
  });

  test.each(readTogether.map((kinds) => ({ kinds })))('$kinds: the site is the same bytes', ({ kinds }) => {
    const random = seededRandom(kinds.join());
    const paths = all.filter((path) => kinds.some((kind) => kindOf(path) === kind));
    rmSync(cache, { recursive: true });
    cpSync(kept, cache, { recursive: true, preserveTimestamps: true });
    for (const name of new Set(kinds.flatMap(readBefore))) rmSync(join(cache, name), { recursive: true });
    damageFiles(cache, paths, (index) => damages[index % damages.length] ?? 'flipped', random);
    const run = build(folders);
    expect(run.status, run.said).toBe(0);
    expect(hashes(out)).toEqual(whole);
    expect(existsSync(join(cache, 'sites'))).toBe(true);
  });
});
