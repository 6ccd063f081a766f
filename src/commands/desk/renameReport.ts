import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Renaming, Saved } from '../../desk/deskWork.ts';
import { composedNames } from '../../site/composedNames.ts';
import { openContentFolder, sha256 } from '../../site/contentFiles.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { notWritten } from '../writing/notWritten.ts';
import { folderSynced, prepareReplacement } from '../writing/wholeFile.ts';

interface Rename extends Renaming {
  readonly contentDir: string;
  readonly disk?: Disk;
}

/**
 * Gives the folder of a report another name, and its file the text that goes with it. The file goes first: killed before
 * the folder follows, the report still knows the address that readers have. Where the folder cannot follow, the file is
 * put back.
 */
export function renameReport({ contentDir, slug, to, text, seen, disk = realDisk }: Rename): Saved {
  const [from, target] = [join(contentDir, 'reports', slug), join(contentDir, 'reports', to)];
  try {
    return withContentLock(contentDir, disk, () => {
      const folder = composedNames(openContentFolder(contentDir));
      const { content } = folder.bytes(`reports/${slug}/report.md`);
      if (content === null || sha256(content) !== seen) return { kind: 'changed' };
      const isTaken = folder.folders('reports').some((name) => name.toLowerCase() === to.toLowerCase());
      if (isTaken || existsSync(target))
        return { kind: 'refused', why: `Nothing was written: there is a report at ${to} already.` };
      replaced(disk, join(from, 'report.md'), text);
      try {
        disk.renameSync(from, target);
      } catch (error) {
        replaced(disk, join(from, 'report.md'), content);
        throw error;
      }
      folderSynced(disk, join(contentDir, 'reports'));
      return { kind: 'written' };
    });
  } catch (error) {
    return { kind: 'refused', why: `${notWritten(contentDir, error)} Nothing was written.` };
  }
}

function replaced(disk: Disk, file: string, content: string | Uint8Array): void {
  const prepared = prepareReplacement(disk, file, content);
  try {
    prepared.put();
  } finally {
    prepared.discard();
  }
}
