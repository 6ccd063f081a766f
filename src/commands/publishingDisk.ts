import { cpSync, renameSync } from 'node:fs';
import { takeAway } from './takeAway.ts';

/** What publishing asks of the disk where it may say no; passed in, so that a test can let it fail. */
export interface Disk {
  readonly rename: (from: string, to: string) => void;
  /** A folder with all that lies in it. */
  readonly copy: (from: string, to: string) => void;
  readonly takeAway: (folder: string, paths: readonly string[]) => void;
}

export const realDisk: Disk = {
  rename: renameSync,
  copy: (from, to) => cpSync(from, to, { recursive: true, verbatimSymlinks: true }),
  takeAway,
};
