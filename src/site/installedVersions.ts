import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';

/** Where package managers write down which versions they have installed. */
const locks = [
  'package-lock.json',
  'npm-shrinkwrap.json',
  'pnpm-lock.yaml',
  'yarn.lock',
  'bun.lock',
  'node_modules/.package-lock.json',
];

/**
 * Changes whenever another version of the program or of a library of it is installed. Where nothing tells which libraries
 * there are, as with a package that is installed for all of a machine, it is never the same: nothing old is believed.
 */
export function installedVersions(programFolder: string): string {
  const manifest = textOf(join(programFolder, 'package.json'));
  if (!programFolder.split(sep).includes('node_modules'))
    return manifest + textOf(join(programFolder, 'package-lock.json'));
  return manifest + (lockAbove(dirname(programFolder)) ?? randomBytes(16).toString('hex'));
}

/** Of the project that a package is installed into: the nearest folder that has a lock. */
function lockAbove(folder: string): string | null {
  const lock = locks.map((name) => join(folder, name)).find((file) => existsSync(file));
  if (lock !== undefined) return readFileSync(lock, 'utf8');
  return dirname(folder) === folder ? null : lockAbove(dirname(folder));
}

const textOf = (file: string): string => (existsSync(file) ? readFileSync(file, 'utf8') : '');
