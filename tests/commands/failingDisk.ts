import { realDisk, type Disk } from '../../src/commands/writing/disk.ts';

/** What ends a command in the middle, as `kill -9` does: nothing catches it, and nothing that follows reaches the disk. */
export class Killed extends Error {}

/** How a disk fails from a step on. */
export type Failure =
  /** Nothing more is done at all. */
  | 'killed'
  /** Nothing new is written; what is there can still be renamed and deleted. */
  | 'full'
  /** One step fails, and all others work. */
  | 'faulty';

export interface FailingDisk {
  readonly disk: Disk;
  /** Steps that were asked for. */
  readonly steps: () => number;
}

/** Steps that take room on a disk. */
const takeRoom: readonly string[] = ['openSync', 'writeSync', 'mkdirSync', 'linkSync'];

/** An error as the operating system reports it. */
export function systemError(code: string, syscall: string): Error {
  return Object.assign(new Error(`${code}: as the system says it, ${syscall}`), { code, syscall });
}

/** A disk whose steps fail from number `from` on, counted from 1. A write that fails has written half. */
export function failingDisk(from: number, failure: Failure): FailingDisk {
  let steps = 0;
  const failing = <Name extends keyof Disk>(name: Name): Disk[Name] => {
    const real = realDisk[name] as (...given: unknown[]) => unknown;
    const step = (...given: unknown[]): unknown => {
      steps += 1;
      if (steps < from || (failure === 'faulty' && steps > from)) return real(...given);
      const reads = name === 'openSync' && given[1] === 'r';
      if (failure === 'full' && (!takeRoom.includes(name) || reads)) return real(...given);
      if (name === 'writeSync' && steps === from)
        real(given[0], given[1], given[2], Math.floor(Number(given[3]) / 2));
      // The system closes what a process has open when it ends.
      if (name === 'closeSync') real(...given);
      if (failure === 'killed') throw new Killed();
      throw systemError(failure === 'full' ? 'ENOSPC' : 'EIO', name);
    };
    return step as Disk[Name];
  };
  const names = Object.keys(stepNames) as (keyof Disk)[];
  return {
    disk: Object.fromEntries(names.map((name) => [name, failing(name)])) as unknown as Disk,
    steps: () => steps,
  };
}

const stepNames: Readonly<Record<keyof Disk, true>> = {
  openSync: true,
  writeSync: true,
  fsyncSync: true,
  closeSync: true,
  fchmodSync: true,
  fchownSync: true,
  mkdirSync: true,
  rmdirSync: true,
  renameSync: true,
  linkSync: true,
  rmSync: true,
};
