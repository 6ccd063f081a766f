import { existsSync, rmdirSync, rmSync, unlinkSync } from 'node:fs';
import { join, posix } from 'node:path';
import { diskView } from '../site/folderView.ts';
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
    if (entered.has(posix.dirname(own)) && diskView.kind(join(folder, own)) === 'folder') entered.add(own);
  }
  for (const path of paths) {
    if (entered.has(posix.dirname(path))) deleteFile(join(folder, path));
  }
  for (const own of outermostFirst.toReversed()) if (entered.has(own)) removeEmpty(join(folder, own));
}

function deleteFile(file: string): void {
  try {
    unlinkSync(file);
  } catch (error) {
    const kind = diskView.kind(file);
    // A folder that somebody has put in its place is not ours.
    if (kind !== null && kind !== 'folder') throw error;
  }
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
