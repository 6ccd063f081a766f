import { systemCode, systemWords } from '../problems/systemWords.ts';

const otherFolder = 'change the permissions there, or name another folder';

/** What to do about what the operating system reports, by its code. */
const cures: Readonly<Record<string, string>> = {
  ENOSPC: 'make room on it',
  EDQUOT: 'make room on it',
  EROFS: 'name a folder on another one',
  EACCES: otherFolder,
  EPERM: otherFolder,
};

/** What a full or locked disk means and what to do, in a sentence that names the place; null for any other error. */
export function diskTrouble(error: unknown): string | null {
  const code = systemCode(error);
  if (code === null || !(error instanceof Error)) return null;
  const place = textOf(error, 'dest') ?? textOf(error, 'path') ?? 'A file of the site or of the cache';
  // Node says so of folders within one that can only be read.
  if (code === 'ENOENT' && textOf(error, 'syscall') === 'mkdir')
    return `${place} could not be written, since no folder can be made there: name another one.`;
  const cure = cures[code];
  return cure === undefined ? null : `${place} could not be written, since ${systemWords(error)}: ${cure}.`;
}

function textOf(error: Error, name: string): string | null {
  const value: unknown = Reflect.get(error, name);
  return typeof value === 'string' ? value : null;
}

/** Whether the disk refuses an operation at this place, which another way may do without. */
export function isRefusedHere(error: unknown): boolean {
  return ['EBUSY', 'EACCES', 'EPERM', 'EROFS', 'EXDEV'].includes(systemCode(error) ?? '');
}
