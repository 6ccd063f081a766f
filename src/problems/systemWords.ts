/** What the operating system reports, in words of everyday, by its code. */
const words: Readonly<Record<string, string>> = {
  EACCES: 'there is no permission',
  EPERM: 'there is no permission',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'no more room is granted on the disk',
  EFBIG: 'the file would be larger than the disk allows',
  EIO: 'the disk reports a fault',
  ELOOP: 'it is a link that leads in a circle',
  ENOTDIR: 'there is a file where a folder should be',
  EISDIR: 'there is a folder where a file should be',
  EEXIST: 'something of that name is there already',
  ENOENT: 'a folder or file on the way is not there',
  ENAMETOOLONG: 'the name is too long',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
  EBUSY: 'another program is using it',
  EXDEV: 'it leads to another disk',
};

/** The code of an error that the operating system reports, such as `ENOSPC`; null for any other error. */
export function systemCode(error: unknown): string | null {
  if (!(error instanceof Error) || !('code' in error) || !('syscall' in error)) return null;
  return typeof error.code === 'string' ? error.code : null;
}

/**
 * An error of the operating system in words, such as "the disk is full (ENOSPC)".
 *
 * @throws any other error as it is: that is no fault of the disk
 */
export function systemWords(error: unknown): string {
  const code = systemCode(error);
  if (code === null) throw error;
  const known = words[code];
  return known === undefined ? `the system says ${code}` : `${known} (${code})`;
}
