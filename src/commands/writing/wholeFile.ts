import { lstatSync, readlinkSync, statSync, type Stats } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { systemCode, systemWords } from '../../problems/systemWords.ts';
import type { Disk } from './disk.ts';
import { removeQuietly, unfinishedIn } from './ownNames.ts';

/** Something written whole and synced beside its place; a reader does not see it yet. */
export interface Prepared {
  /** Puts it in its place in one step. Where it throws, it is not there. */
  readonly put: () => void;
  /** Takes away what was prepared and not put; it fails at nothing. */
  readonly discard: () => void;
}

/**
 * Prepares new content for a file: a reader sees the old one or the new one, and a full disk or a kill leaves the old.
 * The file keeps its mode and its owner; a link is followed.
 */
export function prepareReplacement(disk: Disk, file: string, content: string | Uint8Array): Prepared {
  const target = followed(file);
  const unfinished = unfinishedIn(dirname(target));
  writeSynced(disk, unfinished, content, statOf(target));
  return {
    put: () => {
      disk.renameSync(unfinished, target);
      folderSynced(disk, dirname(target));
    },
    discard: () => removeQuietly(disk, unfinished),
  };
}

/** Prepares a file that is not there yet; `put` fails with `EEXIST` where one has come meanwhile, and leaves that alone. */
export function prepareNewFile(disk: Disk, file: string, content: string | Uint8Array): Prepared {
  const unfinished = unfinishedIn(dirname(file));
  writeSynced(disk, unfinished, content, null);
  return {
    put: () => {
      try {
        disk.linkSync(unfinished, file);
      } catch (error) {
        // Disks of cameras and some network folders know no second name for a file.
        if (systemCode(error) === null || systemCode(error) === 'EEXIST') throw error;
        writeSynced(disk, file, content, null);
      }
      removeQuietly(disk, unfinished);
      folderSynced(disk, dirname(file));
    },
    discard: () => removeQuietly(disk, unfinished),
  };
}

/** Writes a file that is not there yet and waits until the disk has it; where it fails, the file is not there. */
export function writeSynced(
  disk: Disk,
  file: string,
  content: string | Uint8Array,
  like: Stats | null,
): void {
  const bytes = typeof content === 'string' ? Buffer.from(content) : content;
  // What cannot be opened as new may be somebody else's.
  const opened = disk.openSync(file, 'wx', 0o666);
  discardOnFailure(disk, file, () => {
    try {
      for (let written = 0; written < bytes.length;)
        written += disk.writeSync(opened, bytes, written, bytes.length - written);
      if (like !== null) keepOwner(disk, opened, like);
      disk.fsyncSync(opened);
    } finally {
      disk.closeSync(opened);
    }
  });
}

/** What systems answer that open or sync no folders. */
const noSync: readonly string[] = ['EACCES', 'EPERM', 'EISDIR', 'EINVAL', 'ENOTSUP', 'EBADF'];

/** Waits until the disk has the names in a folder; false where it fails to. */
export function folderSynced(disk: Disk, folder: string): boolean {
  try {
    const opened = disk.openSync(folder, 'r');
    try {
      disk.fsyncSync(opened);
    } finally {
      disk.closeSync(opened);
    }
    return true;
  } catch (error) {
    systemWords(error);
    return noSync.includes(systemCode(error) ?? '');
  }
}

/** Takes away what this process has made at a path, where the work on it fails. */
export function discardOnFailure(disk: Disk, path: string, work: () => void): void {
  try {
    work();
  } catch (error) {
    removeQuietly(disk, path);
    throw error;
  }
}

function keepOwner(disk: Disk, opened: number, { uid, gid, mode }: Stats): void {
  const differs = process.getuid?.() !== uid || process.getgid?.() !== gid;
  // Only an administrator may give a file away, and some disks know neither owners nor modes.
  if (differs) unlessNotPermitted(() => disk.fchownSync(opened, uid, gid));
  unlessNotPermitted(() => disk.fchmodSync(opened, mode & 0o7777));
}

function unlessNotPermitted(work: () => void): void {
  try {
    work();
  } catch (error) {
    if (!['EPERM', 'ENOTSUP', 'EINVAL'].includes(systemCode(error) ?? '')) throw error;
  }
}

function statOf(file: string): Stats | null {
  return statSync(file, { throwIfNoEntry: false }) ?? null;
}

/** Where links lead, also to what is not there yet. */
function followed(file: string, links = 0): string {
  const found = lstatSync(file, { throwIfNoEntry: false });
  // So many links in a row lead in a circle; the disk says so when the file is written.
  if (found === undefined || !found.isSymbolicLink() || links > 40) return file;
  return followed(resolve(dirname(file), readlinkSync(file)), links + 1);
}
