const causes: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full: make room on it',
  EDQUOT: 'your share of the disk is used up: make room on it',
  EROFS: 'the disk can only be read: name a folder on another one',
  EACCES: 'it may not be written (permission denied): change its permissions or name another folder',
  EPERM: 'it may not be written (not permitted): change its permissions or name another folder',
};

/** What a full or locked disk means and what to do, in a sentence that names the place; null for any other error. */
export function diskTrouble(error: unknown): string | null {
  if (!(error instanceof Error) || !('code' in error)) return null;
  // Node says so of folders within one that can only be read.
  const isUnmade = error.code === 'ENOENT' && textOf(error, 'syscall') === 'mkdir';
  const cause = isUnmade ? 'no folder can be made there: name another one' : causes[String(error.code)];
  if (cause === undefined) return null;
  const place = textOf(error, 'dest') ?? textOf(error, 'path') ?? 'A file of the site or of the cache';
  return `${place} could not be written, since ${cause}.`;
}

function textOf(error: Error, name: string): string | null {
  const value: unknown = Reflect.get(error, name);
  return typeof value === 'string' ? value : null;
}

/** Whether the disk refuses an operation at this place, which another way may do without. */
export function isRefusedHere(error: unknown): boolean {
  return (
    error instanceof Error &&
    'code' in error &&
    ['EBUSY', 'EACCES', 'EPERM', 'EROFS', 'EXDEV'].includes(String(error.code))
  );
}
