import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isRefusedHere } from '../site/diskTrouble.ts';
import { ownFiles } from '../site/folderDecision.ts';
import { foreignIn, isEmptySite, siteMarkName } from '../site/siteMark.ts';
import { realDisk, type Disk } from './publishingDisk.ts';
import { replaceWithin } from './replaceWithin.ts';
import { workName } from './siteLeftovers.ts';

export interface Publication {
  /** The freshly built site with its mark; it is moved or deleted. */
  readonly built: string;
  /** Where it goes, links followed. */
  readonly outDir: string;
  readonly projectFolder: string;
  readonly disk?: Disk;
}

/**
 * Replaces the site in `outDir`. Where nothing else lies there that is two renames, so that a reader or a killed process
 * never sees half a site. Where others keep files there, or the folder cannot be renamed (something is mounted on it, or
 * its parent is not ours to write), files are replaced one by one within it.
 *
 * @throws where files stand in the way that no build wrote, or the disk refuses; the site of before is then whole
 */
export function publishSite({ built, outDir, projectFolder, disk = realDisk }: Publication): void {
  mkdirSync(dirname(outDir), { recursive: true });
  const own = ownNow(outDir, projectFolder);
  const within = (from: string): void => replaceWithin({ built: from, outDir, own: own ?? [], disk });
  if (own !== null && foreignIn(outDir, own).length > 0) {
    within(built);
    return;
  }
  const near = workName(outDir, 'new');
  const retired = workName(outDir, 'old');
  try {
    try {
      bring(built, near, disk);
      if (own !== null) disk.rename(outDir, retired);
    } catch (error) {
      if (own === null || !isRefusedHere(error)) throw error;
      within(existsSync(built) ? built : near);
      return;
    }
    try {
      disk.rename(near, outDir);
    } catch (error) {
      if (own !== null) disk.rename(retired, outDir);
      throw error;
    }
    try {
      if (own !== null) disk.takeAway(retired, own);
    } catch {
      // The new site is there. The next build takes the old one away, or says why it cannot.
    }
  } finally {
    rmSync(near, { recursive: true, force: true });
  }
}

/** Paths of our files in the folder; null where there is no folder yet. */
function ownNow(outDir: string, projectFolder: string): readonly string[] | null {
  if (!existsSync(outDir)) return null;
  if (isEmptySite(readdirSync(outDir))) return [];
  const own = ownFiles(outDir, projectFolder);
  if (own === null || own === 'damaged') {
    throw new Error(
      `${outDir} has got files meanwhile that no build of ours wrote. Move them away, then build again.`,
    );
  }
  return own.paths;
}

/** Moves a folder beside the site: renames do not cross file systems. */
function bring(built: string, near: string, disk: Disk): void {
  try {
    disk.rename(built, near);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EXDEV')) throw error;
    mkdirSync(near);
    // First the mark, by which a copy that is killed half way is known.
    disk.copy(join(built, siteMarkName), join(near, siteMarkName));
    disk.copy(built, near);
  }
}
