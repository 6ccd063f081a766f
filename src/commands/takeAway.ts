import { existsSync, lstatSync, rmdirSync, rmSync } from 'node:fs';
import { join, posix } from 'node:path';
import { foldersOf, siteMarkName, unfinishedName } from '../site/siteMark.ts';

/** Deletes those files of a site, its mark, and the folders that are then empty. Whatever else lies there stays. */
export function takeAway(folder: string, paths: readonly string[]): void {
  rmSync(join(folder, unfinishedName), { recursive: true, force: true });
  deleteFiles(folder, paths);
  rmSync(join(folder, siteMarkName), { force: true });
  removeEmpty(folder);
}

/** Deletes files and the folders below `folder` that held nothing else. Links that others have put there are not followed. */
export function deleteFiles(folder: string, paths: readonly string[]): void {
  const outermostFirst = [...foldersOf(paths)].sort((x, y) => x.split('/').length - y.split('/').length);
  const entered = new Set(['.']);
  for (const own of outermostFirst) {
    const found = lstatSync(join(folder, own), { throwIfNoEntry: false });
    if (found?.isDirectory() === true && entered.has(posix.dirname(own))) entered.add(own);
  }
  for (const path of paths) {
    const file = join(folder, path);
    if (!entered.has(posix.dirname(path))) continue;
    // A folder that somebody has put in its place is not ours.
    if (lstatSync(file, { throwIfNoEntry: false })?.isDirectory() === false) rmSync(file);
  }
  for (const own of outermostFirst.toReversed()) if (entered.has(own)) removeEmpty(join(folder, own));
}

function removeEmpty(folder: string): void {
  if (!existsSync(folder)) return;
  try {
    rmdirSync(folder);
  } catch (error) {
    if (!isFull(error)) throw error;
  }
}

const isFull = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && ['ENOTEMPTY', 'EEXIST', 'EBUSY'].includes(String(error.code));
