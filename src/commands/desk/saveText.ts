import { join } from 'node:path';
import type { Saved } from '../../desk/deskWork.ts';
import { composedNames } from '../../site/composedNames.ts';
import { openContentFolder, sha256 } from '../../site/contentFiles.ts';
import { sizeLimit } from '../../site/sizeLimits.ts';
import { shopFile } from '../../site/sharedFiles.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { writeEditorSchemas } from '../writing/editorSchemas.ts';
import { notWritten } from '../writing/notWritten.ts';
import { prepareNewFile, prepareReplacement } from '../writing/wholeFile.ts';

interface Save {
  readonly contentDir: string;
  /** Path from the content folder; one that leads out of it holds nothing. */
  readonly file: string;
  readonly text: string;
  /** SHA-256 of the file as it was seen; null where there was none. */
  readonly seen: string | null;
  readonly disk?: Disk;
}

/** Writes a text in place of a file of the content folder if that is still as it was seen: whole or not at all. */
export function saveText({ contentDir, file, text, seen, disk = realDisk }: Save): Saved {
  const { most, cure } = sizeLimit(file);
  const bytes = Buffer.byteLength(text);
  // It could not be read again, here or in a build.
  if (bytes > most)
    return {
      kind: 'refused',
      why: `Nothing was written: that is ${megabytes(bytes)} MB of text, and ${megabytes(most)} MB are read at most. ${cure}`,
    };
  try {
    return withContentLock(contentDir, disk, () => {
      // Read through the folder, which follows no link out of it.
      const { content } = composedNames(openContentFolder(contentDir)).bytes(file);
      if ((content === null ? null : sha256(content)) !== seen) return { kind: 'changed' };
      const path = join(contentDir, file);
      const prepared =
        seen === null ? prepareNewFile(disk, path, text) : prepareReplacement(disk, path, text);
      try {
        prepared.put();
        if (file === shopFile) writeEditorSchemas(contentDir, disk);
        return { kind: 'written' };
      } finally {
        prepared.discard();
      }
    });
  } catch (error) {
    return { kind: 'refused', why: `${notWritten(contentDir, error)} Nothing was written.` };
  }
}

const megabytes = (bytes: number): string => (bytes / 1_000_000).toFixed(1);
