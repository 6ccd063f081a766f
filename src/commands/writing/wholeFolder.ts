import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Disk } from './disk.ts';
import { removeQuietly, unfinishedIn } from './ownNames.ts';
import { discardOnFailure, folderSynced, writeSynced, type Prepared } from './wholeFile.ts';

/** A folder is there already, and is not touched. */
export class FolderTaken extends Error {}

/**
 * Prepares a new folder with files in it: a reader sees all of them or no folder.
 *
 * @param files content by name
 * @throws FolderTaken on `put`, where something of that name has come meanwhile
 */
export function prepareFolder(
  disk: Disk,
  folder: string,
  files: Readonly<Record<string, string | Uint8Array>>,
): Prepared {
  const parent = dirname(folder);
  disk.mkdirSync(parent, { recursive: true });
  const unfinished = unfinishedIn(parent);
  disk.mkdirSync(unfinished);
  discardOnFailure(disk, unfinished, () => {
    for (const [name, content] of Object.entries(files))
      writeSynced(disk, join(unfinished, name), content, null);
    folderSynced(disk, unfinished);
  });
  return {
    put: () => {
      // A rename would take the place of an empty folder.
      if (existsSync(folder)) throw new FolderTaken(folder);
      disk.renameSync(unfinished, folder);
      folderSynced(disk, parent);
    },
    discard: () => removeQuietly(disk, unfinished),
  };
}
