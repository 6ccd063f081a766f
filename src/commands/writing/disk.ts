import * as fs from 'node:fs';

/** All that changes anything in a content folder; tests pass a disk that fails or ends half way. */
export type Disk = Pick<
  typeof fs,
  | 'openSync'
  | 'writeSync'
  | 'fsyncSync'
  | 'closeSync'
  | 'fchmodSync'
  | 'fchownSync'
  | 'mkdirSync'
  | 'rmdirSync'
  | 'renameSync'
  | 'linkSync'
  | 'rmSync'
>;

export const realDisk: Disk = fs;
