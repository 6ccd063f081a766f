import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { isRunning } from './isRunning.ts';
import { longestBuild } from './workFolders.ts';

/**
 * Marks that this build is at work with a cache; false where another one is: what was written down of the site of before
 * may then be out of date at any moment.
 */
export function markBuild(file: string, now: number): boolean {
  mkdirSync(dirname(file), { recursive: true });
  for (const attempt of ['first', 'after-taking-away']) {
    try {
      writeFileSync(file, String(process.pid), { flag: 'wx' });
      return true;
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
      if (attempt === 'after-taking-away' || isAtWork(file, now)) return false;
      rmSync(file, { force: true });
    }
  }
  return false;
}

/** Says that it is free. */
export function unmarkBuild(file: string): void {
  rmSync(file, { force: true });
}

function isAtWork(file: string, now: number): boolean {
  const found = statSync(file, { throwIfNoEntry: false });
  if (found === undefined || now - found.mtimeMs > longestBuild) return false;
  const builder = Number(readFileSync(file, 'utf8'));
  return builder !== process.pid && isRunning(builder);
}
