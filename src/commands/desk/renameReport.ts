import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Renaming, Saved } from '../../desk/deskWork.ts';
import { composedNames } from '../../site/composedNames.ts';
import { openContentFolder, sha256 } from '../../site/contentFiles.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { notWritten } from '../writing/notWritten.ts';
import { prepareReplacement } from '../writing/wholeFile.ts';

interface Rename extends Renaming {
  readonly contentDir: string;
  readonly disk?: Disk;
}

/**
 * Gives the folder of a report another name, and its file the text that goes with it. The folder goes first, in one
 * step; where the file cannot be written then, the folder goes back.
 */
export function renameReport({ contentDir, slug, to, text, seen, disk = realDisk }: Rename): Saved {
  const [from, target] = [slug, to].map((name) => join(contentDir, 'reports', name));
  if (from === undefined || target === undefined) return { kind: 'changed' };
  try {
    return withContentLock(contentDir, disk, () => {
      const folder = composedNames(openContentFolder(contentDir));
      const { content } = folder.bytes(`reports/${slug}/report.md`);
      if (content === null || sha256(content) !== seen) return { kind: 'changed' };
      const isTaken = folder.folders('reports').some((name) => name.toLowerCase() === to.toLowerCase());
      if (isTaken || existsSync(target))
        return { kind: 'refused', why: `Nothing was written: there is a report at ${to} already.` };
      disk.renameSync(from, target);
      try {
        const prepared = prepareReplacement(disk, join(target, 'report.md'), text);
        try {
          prepared.put();
        } finally {
          prepared.discard();
        }
      } catch (error) {
        disk.renameSync(target, from);
        throw error;
      }
      return { kind: 'written' };
    });
  } catch (error) {
    return { kind: 'refused', why: `${notWritten(contentDir, error)} Nothing was written.` };
  }
}
