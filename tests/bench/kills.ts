/**
 * Builds killed at random moments: is the content untouched, the site of before still whole, the next build right, and
 * what is left behind? Run by hand, with how many kills:
 *
 *   node tests/bench/kills.ts 100
 *
 * Before each kill one report has other shots; before the build that follows they are put back, so that any copy of a
 * page that the killed build left would show.
 */
import { existsSync, mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { build, foldersFor, hashes, startBuild } from '../commands/builds.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { benchShots, writeBenchContent } from './content.ts';

const kills = Number(process.argv[2] ?? 20);
const content = join(mkdtempSync(join(tmpdir(), 'kills-')), 'content');
writeBenchContent(content, 4);
const folders = foldersFor(content);
build(folders);
const before = JSON.stringify(hashes(folders.out));
const shots = join(content, 'reports/four-heads-0001/shots.csv');
const start = performance.now();
build(folders);
const usual = performance.now() - start;
const random = seededRandom('kills');
const seen = { killed: 0, ended: 0, whole: 0, aside: 0, right: 0, untouched: 0, leftBehind: 0 };
const contentBefore = JSON.stringify(hashes(content));
const leftBehind = (): number =>
  [...readdirSync('.cache'), ...readdirSync(join(folders.out, '..'))].filter((name) =>
    /^new-|straightface-(?:old|new)-/.test(name),
  ).length;
const leftAtFirst = leftBehind();
for (let index = 0; index < kills; index += 1) {
  writeFileSync(shots, benchShots(`morning ${index}`));
  const running = startBuild(folders);
  const ended = new Promise<string | null>((resolve) => running.on('exit', (_status, how) => resolve(how)));
  // A changed report makes the build longer than the usual one.
  await setTimeout(random.uniform() * 2 * usual);
  running.kill('SIGKILL');
  if ((await ended) === 'SIGKILL') {
    seen.killed += 1;
    if (!existsSync(folders.out)) seen.aside += 1;
    else if (JSON.stringify(hashes(folders.out)) === before) seen.whole += 1;
  } else seen.ended += 1;
  writeFileSync(shots, benchShots('0'));
  const next = build(folders);
  if (JSON.stringify(hashes(content)) === contentBefore) seen.untouched += 1;
  seen.leftBehind = Math.max(seen.leftBehind, leftBehind() - leftAtFirst);
  if (next.status === 0 && JSON.stringify(hashes(folders.out)) === before) seen.right += 1;
  console.log(index + 1, JSON.stringify(seen));
}
