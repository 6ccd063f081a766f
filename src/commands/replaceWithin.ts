import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { diskView } from '../site/folderView.ts';
import { foldersOf, readSiteMark, siteMark, siteMarkName, unfinishedName } from '../site/siteMark.ts';
import type { Disk } from './publishingDisk.ts';
import { deleteFiles } from './takeAway.ts';

interface Replacement {
  readonly built: string;
  readonly outDir: string;
  /** Paths of the files there that the last build wrote. */
  readonly own: readonly string[];
  readonly disk: Disk;
}

/**
 * Replaces a site file by file within its folder, whatever else lies there. All new files are in the folder before the
 * first is replaced, so a full disk changes nothing; files that are gone go last, so no page is missing meanwhile. Killed
 * on the way it leaves each file whole, old or new, and a mark that lists both: the next build puts it right.
 *
 * @throws where a file of the new site would replace one that no build wrote
 */
export function replaceWithin({ built, outDir, own, disk }: Replacement): void {
  const mark = readSiteMark(built);
  if (mark.kind !== 'list') throw new Error(`The new site in ${built} has no mark.`);
  const { paths } = mark;
  const inTheWay = foreignInTheWay(outDir, paths, own);
  if (inTheWay !== null) {
    throw new Error(
      `${join(outDir, inTheWay)} was written by no build of ours, and the site has a file for this place. Move it away, then build again.`,
    );
  }
  const unfinished = join(outDir, unfinishedName);
  rmSync(unfinished, { recursive: true, force: true });
  try {
    bringWithin(built, unfinished, disk);
    const both = join(unfinished, `${siteMarkName}.both`);
    writeFileSync(both, siteMark([...new Set([...own, ...paths])]));
    renameSync(both, join(outDir, siteMarkName));
  } catch (error) {
    rmSync(unfinished, { recursive: true, force: true });
    throw error;
  }
  deleteFiles(outDir, replacedByOtherKind(own, paths));
  for (const folder of foldersOf(paths)) mkdirSync(join(outDir, folder), { recursive: true });
  for (const path of pagesLast(paths)) renameSync(join(unfinished, path), join(outDir, path));
  const kept = new Set(paths);
  deleteFiles(
    outDir,
    own.filter((path) => !kept.has(path)),
  );
  renameSync(join(unfinished, siteMarkName), join(outDir, siteMarkName));
  rmSync(unfinished, { recursive: true, force: true });
}

function bringWithin(built: string, unfinished: string, disk: Disk): void {
  try {
    disk.rename(built, unfinished);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EXDEV')) throw error;
    disk.copy(built, unfinished);
  }
}

/** The first path at which something stands that is not ours and would be lost; null where none is. */
function foreignInTheWay(outDir: string, paths: readonly string[], own: readonly string[]): string | null {
  const ownFiles = new Set(own);
  const ownFolders = foldersOf(own);
  const kindOf = (path: string) => diskView.kind(join(outDir, path));
  for (const folder of foldersOf(paths)) {
    const kind = kindOf(folder);
    if (kind !== null && kind !== 'folder' && !ownFiles.has(folder)) return folder;
  }
  for (const path of paths) {
    const kind = kindOf(path);
    if (kind === 'folder' ? !ownFolders.has(path) : kind !== null && !ownFiles.has(path)) return path;
  }
  return null;
}

/** Files of before whose place a folder takes, or that lie in a folder whose place a file takes. */
function replacedByOtherKind(own: readonly string[], paths: readonly string[]): readonly string[] {
  const folders = foldersOf(paths);
  const files = new Set(paths);
  return own.filter(
    (path) => folders.has(path) || [...foldersOf([path])].some((folder) => files.has(folder)),
  );
}

/** What pages show before the pages, the front page last: a page never asks for what is not there yet. */
function pagesLast(paths: readonly string[]): readonly string[] {
  const rank = (path: string): number =>
    path === 'index.html' ? 2 : basename(path).endsWith('.html') ? 1 : 0;
  return paths.toSorted((x, y) => rank(x) - rank(y) || dirname(x).localeCompare(dirname(y)));
}
