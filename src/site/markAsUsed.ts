import { statSync, utimesSync } from 'node:fs';
import { diskTrouble } from './diskTrouble.ts';

const day = 24 * 60 * 60 * 1000;

/** The date of a cache file says when it was last written or read, give or take a day: by it old ones are deleted. */
export function markAsUsed(file: string): void {
  const now = new Date();
  const found = statSync(file, { throwIfNoEntry: false });
  if (found === undefined || now.getTime() - found.mtimeMs < day) return;
  try {
    utimesSync(file, now, now);
  } catch (error) {
    // A cache that can only be read is no error; what it holds is right all the same.
    if (diskTrouble(error) === null) throw error;
  }
}
