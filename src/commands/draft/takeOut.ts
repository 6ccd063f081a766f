import { readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { systemWords } from '../../problems/systemWords.ts';
import { visible } from '../../problems/visible.ts';
import type { Terminal } from '../terminal.ts';
import type { Disk } from '../writing/disk.ts';
import { folderSynced } from '../writing/wholeFile.ts';

/**
 * Takes a file out of the inbox, but only once the disk has the copy in a report with the same bytes; others stay where
 * they are.
 */
export function takeOut(
  path: string,
  copy: string,
  {
    contentDir,
    terminal,
    disk,
  }: { readonly contentDir: string; readonly terminal: Terminal; readonly disk: Disk },
): void {
  if (resolve(dirname(path)) !== resolve(join(contentDir, 'inbox'))) return;
  try {
    const report = dirname(copy);
    if (!folderSynced(disk, report) || !folderSynced(disk, dirname(report)))
      terminal.writeError(
        `${visible(path)} stays in the inbox: the disk does not say that it has kept the copy.\n`,
      );
    else if (readFileSync(path).equals(readFileSync(copy))) {
      disk.rmSync(path);
      folderSynced(disk, dirname(path));
    } else terminal.writeError(`${visible(path)} has changed meanwhile and stays there.\n`);
  } catch (error) {
    terminal.writeError(`${visible(path)} cannot be taken out of the inbox: ${systemWords(error)}.\n`);
  }
}
