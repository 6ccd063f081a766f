import { randomBytes } from 'node:crypto';
import { mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isRunning } from './isRunning.ts';

/** No build takes longer, milliseconds: the number of a process goes to another one some day. */
export const longestBuild = 24 * 60 * 60 * 1000;

/**
 * A new, empty folder in which the pages are built, as readable as the umask says. Its name carries the number of the
 * process, by which a folder that a killed build left is known, and is never used twice: a process keeps the code of
 * pages by the path from which it read them.
 */
export function newWorkFolder(inside: string): string {
  mkdirSync(inside, { recursive: true });
  const folder = join(inside, `new-${process.pid}-${randomBytes(6).toString('hex')}`);
  mkdirSync(folder);
  return folder;
}

/** Deletes the work folder of this build. Where pages of a failed build are still being written, the next one does. */
export function removeWorkFolder(folder: string): void {
  try {
    rmSync(folder, { recursive: true, force: true });
  } catch {
    // Said by the next build if it cannot do it either.
  }
}

/** Deletes the folders of builds that are no longer at work, and of earlier versions, which wrote no number. */
export function removeLeftBehind(inside: string, now: number): void {
  for (const name of namesIn(inside)) {
    const [, pid] = /^new-(?:(\d+)-[0-9a-f]{12}|[A-Za-z0-9]{6})(?:-astro)?$/.exec(name) ?? [null, null];
    if (pid === null) continue;
    const folder = join(inside, name);
    const isOld = now - (statSync(folder, { throwIfNoEntry: false })?.mtimeMs ?? now) > longestBuild;
    const isAtWork = pid === undefined || Number(pid) === process.pid || isRunning(Number(pid));
    if (isOld || !isAtWork) rmSync(folder, { recursive: true, force: true });
  }
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return [];
    throw error;
  }
}
