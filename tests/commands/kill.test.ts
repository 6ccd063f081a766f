import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { benchShots, writeBenchContent } from '../bench/content.ts';
import { build, foldersFor, hashes, newFolder, startBuild, type Folders } from './builds.ts';

/** Starts a build and kills it after so many milliseconds; false where it had ended before. */
async function killedAfter(folders: Folders, milliseconds: number): Promise<boolean> {
  const running = startBuild(folders);
  const ended = new Promise<NodeJS.Signals | null>((resolve) => {
    running.on('exit', (_status, signal) => resolve(signal));
  });
  await setTimeout(milliseconds);
  running.kill('SIGKILL');
  return (await ended) === 'SIGKILL';
}

// The figures for twenty kills are in DEVELOPERS.md; `tests/bench/kills.ts` makes them.
test('a build that is killed leaves the site whole, and the next one is right', async () => {
  const content = newFolder('content');
  writeBenchContent(content, 2);
  const folders = foldersFor(content);
  expect(build(folders)).toMatchObject({ status: 0 });
  const before = hashes(folders.out);
  const shots = join(content, 'reports/four-heads-0001/shots.csv');
  const original = benchShots('0');
  const changed = benchShots('another morning');
  writeFileSync(shots, changed);
  const elsewhere = foldersFor(content);
  expect(build(elsewhere).status).toBe(0);
  const after = hashes(elsewhere.out);
  let kills = 0;
  for (const milliseconds of [600, 1300, 2000]) {
    writeFileSync(shots, changed);
    if (await killedAfter(folders, milliseconds)) {
      kills += 1;
      // Between the two renames the site lies beside its place for an instant; the next build puts it back. After them
      // a build has some tidying to do.
      if (existsSync(folders.out)) expect([before, after]).toContainEqual(hashes(folders.out));
    }
    // Put back: a copy of a page left by the killed build must not be taken for the right one.
    writeFileSync(shots, original);
    expect(build(folders).status).toBe(0);
    expect(hashes(folders.out)).toEqual(before);
  }
  expect(kills).toBeGreaterThan(0);
});
