import { lstatSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { schemaFolder } from '../../intake/authored/schemaLine.ts';
import { systemWords } from '../../problems/systemWords.ts';
import { isRunning } from '../isRunning.ts';
import type { Disk } from './disk.ts';

/** The lock of a content folder; hidden, so that no reader takes it for content. */
export const lockName = '.straightface-lock';

const unfinishedName = /^\.straightface-(\d+)-\d+\.new$/;

let made = 0;

/** A name, as yet unused, for what is being written; hidden as well, and known as ours with its process by anybody. */
export function unfinishedIn(folder: string): string {
  made += 1;
  return join(folder, `.straightface-${process.pid}-${made}.new`);
}

/** No command writes for longer, milliseconds: the number of its process may have gone to another one since. */
const longest = 60 * 60 * 1000;

/** Whether killed commands have left anything in a content folder. */
export function hasLeftovers(contentDir: string): boolean {
  return [contentDir, ...ownFolders(contentDir)].some((folder) =>
    namesIn(folder).some((name) => name.startsWith(lockName) || unfinishedName.test(name)),
  );
}

/** Deletes what killed commands have left half written in a content folder. Only who holds the lock may do so. */
export function tidyLeftovers(contentDir: string, disk: Disk, now: number): void {
  for (const folder of [contentDir, ...ownFolders(contentDir)]) {
    for (const name of namesIn(folder)) {
      const writer = Number(unfinishedName.exec(name)?.[1] ?? NaN);
      if (Number.isNaN(writer)) continue;
      const path = join(folder, name);
      const found = lstatSync(path, { throwIfNoEntry: false });
      const isYoung = found !== undefined && now - found.mtimeMs < longest;
      // Nothing of this process is half written while it begins.
      if (writer !== process.pid && isYoung && isRunning(writer)) continue;
      removeQuietly(disk, path);
    }
  }
}

/** Takes away what is ours, as after something else went wrong: that is what is told, and the next command tidies up. */
export function removeQuietly(disk: Disk, path: string): void {
  try {
    disk.rmSync(path, { recursive: true, force: true });
  } catch (error) {
    systemWords(error);
  }
}

/** The folder of the schemas, that of the reports, that of each, and its versions. */
function ownFolders(contentDir: string): readonly string[] {
  const reports = join(contentDir, 'reports');
  const names = namesIn(reports).filter((name) => !name.startsWith('.'));
  return [
    join(contentDir, schemaFolder),
    reports,
    ...names.flatMap((name) => [join(reports, name), join(reports, name, 'versions')]),
  ];
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (error) {
    // A file among the folders, or none of them yet: there is nothing of ours in it.
    systemWords(error);
    return [];
  }
}
