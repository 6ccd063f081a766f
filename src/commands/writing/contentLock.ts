import { lstatSync, readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { systemCode, systemWords } from '../../problems/systemWords.ts';
import { isRunning } from '../isRunning.ts';
import type { Disk } from './disk.ts';
import { lockName, removeQuietly, tidyLeftovers } from './ownNames.ts';
import { prepareNewFile } from './wholeFile.ts';

/** Time, and how to let it pass; tests pass their own. */
export interface Waiting {
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Does nothing for so many milliseconds. */
  readonly sleep: (milliseconds: number) => void;
}

const realWaiting: Waiting = {
  now: () => Date.now(),
  sleep: (milliseconds) => void Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, milliseconds),
};

/** Another command did not let go of the content folder in time; the message says what to do. */
export class ContentLocked extends Error {}

/** How long a command waits for another one, milliseconds. */
const patience = 15_000;

/** How long a lock is believed whose process cannot be asked, milliseconds: no command holds it for half as long. */
const believed = 10 * 60 * 1000;

/** The same where a process of its number runs, which may be another one since, milliseconds. */
const believedWhileRunning = 60 * 60 * 1000;

/**
 * Does work that writes in a content folder, which is made where it is missing, while no other command of ours writes
 * there. What a killed command has left is taken over and tidied.
 *
 * @throws ContentLocked where another command is at work for too long; errors of the disk as they come
 */
export function withContentLock<Value>(
  contentDir: string,
  disk: Disk,
  work: () => Value,
  waiting: Waiting = realWaiting,
): Value {
  const made = disk.mkdirSync(contentDir, { recursive: true }) !== undefined;
  const lock = join(contentDir, lockName);
  try {
    takeLock(lock, disk, waiting);
    try {
      tidyLeftovers(contentDir, disk, waiting.now());
      return work();
    } finally {
      if (ownerOf(lock)?.process === process.pid) removeQuietly(disk, lock);
    }
  } finally {
    if (made) removeEmpty(disk, contentDir);
  }
}

function takeLock(lock: string, disk: Disk, waiting: Waiting): void {
  const until = waiting.now() + patience;
  while (!lockTaken(lock, disk)) {
    if (isLeftBehind(lock, waiting.now())) takeAway(lock, disk, waiting);
    else if (waiting.now() > until) throw new ContentLocked(lockedWords(lock));
    else waiting.sleep(20);
  }
}

/** False where another command has it. */
function lockTaken(lock: string, disk: Disk): boolean {
  // Looked up first, so that who waits writes nothing.
  if (lstatSync(lock, { throwIfNoEntry: false }) !== undefined) return false;
  const prepared = prepareNewFile(disk, lock, `${process.pid} ${hostname()}\n`);
  try {
    prepared.put();
    return true;
  } catch (error) {
    prepared.discard();
    if (systemCode(error) === 'EEXIST') return false;
    throw error;
  }
}

/**
 * Takes a lock away that was left behind. Two commands may see the same one, and the second must not take the fresh lock
 * of the first: so only who holds the lock of the lock may do it.
 */
function takeAway(lock: string, disk: Disk, waiting: Waiting): void {
  const guard = `${lock}-taken`;
  if (!lockTaken(guard, disk)) {
    if (isLeftBehind(guard, waiting.now())) disk.rmSync(guard, { force: true });
    waiting.sleep(20);
    return;
  }
  try {
    if (isLeftBehind(lock, waiting.now())) disk.rmSync(lock, { force: true });
  } finally {
    removeQuietly(disk, guard);
  }
}

interface Owner {
  readonly process: number;
  readonly host: string;
}

function ownerOf(lock: string): Owner | null {
  try {
    const [, number, host] = /^(\d+) (.*)\n$/.exec(readFileSync(lock, 'utf8')) ?? [];
    return number === undefined || host === undefined ? null : { process: Number(number), host };
  } catch (error) {
    systemWords(error);
    return null;
  }
}

/** Whether whoever made a lock has ended without taking it away. */
function isLeftBehind(lock: string, now: number): boolean {
  const found = lstatSync(lock, { throwIfNoEntry: false });
  if (found === undefined) return false;
  const age = now - found.mtimeMs;
  const owner = ownerOf(lock);
  if (owner === null || owner.host !== hostname()) return age > believed;
  // A process asks for the lock once: one of its own number is of an earlier process.
  return owner.process === process.pid || !isRunning(owner.process) || age > believedWhileRunning;
}

function lockedWords(lock: string): string {
  const owner = ownerOf(lock);
  const who =
    owner === null ? 'Another command' : `Another command (process ${owner.process} on ${owner.host})`;
  return `${who} is writing in the content folder. Try again when it has ended; if there is none, delete ${lock}.`;
}

function removeEmpty(disk: Disk, folder: string): void {
  try {
    disk.rmdirSync(folder);
  } catch (error) {
    // Something was written there.
    systemWords(error);
  }
}
