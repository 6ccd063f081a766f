/**
 * Every file of a cache damaged: is the site still the same bytes as without a cache? Run by hand:
 *
 *   node tests/bench/damagedCaches.ts
 */
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, foldersFor, hashes } from '../commands/builds.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { writeBenchContent } from './content.ts';
import { cacheFiles, cacheKinds, damageFiles, damages, kindOf, readBefore } from './damage.ts';

const content = join(mkdtempSync(join(tmpdir(), 'damaged-')), 'content');
writeBenchContent(content, 2);
const folders = foldersFor(content);
build(folders);
const whole = JSON.stringify(hashes(folders.out));
const kept = `${folders.cache}-kept`;
cpSync(folders.cache, kept, { recursive: true, preserveTimestamps: true });
const all = cacheFiles(kept);
const random = seededRandom('damaged caches');
let wrong = 0;
console.log(`${all.length} files, ${all.filter((path) => kindOf(path) === null).length} of no kind`);
for (const kind of cacheKinds) {
  const paths = all.filter((path) => kindOf(path) === kind);
  for (const damage of damages) {
    rmSync(folders.cache, { recursive: true });
    cpSync(kept, folders.cache, { recursive: true, preserveTimestamps: true });
    for (const name of readBefore(kind)) rmSync(join(folders.cache, name), { recursive: true });
    damageFiles(folders.cache, paths, () => damage, random);
    const { status, said } = build(folders);
    const isRight = status === 0 && JSON.stringify(hashes(folders.out)) === whole;
    if (!isRight) {
      wrong += 1;
      console.log(said);
    }
    console.log(`${kind}: ${paths.length} files ${damage}: ${isRight ? 'the same bytes' : 'WRONG'}`);
  }
}
console.log(`${wrong} wrong`);
