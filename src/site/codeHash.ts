import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { installedVersions } from './installedVersions.ts';

/** Folders of `src` whose code decides over what a report says. */
const deciding = [
  'problems',
  'trade',
  'stats',
  'flight',
  'intake',
  'findings',
  'prose',
  'charts',
  'kit',
  'site',
];

/** Hashes of folders that were read already. */
type Known = Map<string, string>;

/** SHA-256 over all that turns a report's files into figures: our code, the libraries, Node; null without the sources. */
export function codeHash(projectFolder: string, known: Known = new Map()): string | null {
  return hashOfFolders(
    projectFolder,
    deciding.map((name) => `src/${name}`),
    known,
  );
}

export interface CodeHashes {
  /** See `codeHash`. */
  readonly reports: string | null;
  /** As `codeHash`, over all that turns figures into pages as well. */
  readonly pages: string | null;
}

/** Both hashes, for which each file is read once. */
export function codeHashes(projectFolder: string): CodeHashes {
  const src = join(projectFolder, 'src');
  const folders = existsSync(src) ? readdirSync(src).map((name) => `src/${name}`) : [];
  const specimens = process.env['SPECIMENS'] === undefined ? [] : ['tests/specimen-pages', 'tests/specimen'];
  const known: Known = new Map();
  return {
    reports: codeHash(projectFolder, known),
    pages: hashOfFolders(projectFolder, [...folders.toSorted(), 'public', ...specimens], known),
  };
}

function hashOfFolders(projectFolder: string, names: readonly string[], known: Known): string | null {
  if (!names.every((name) => existsSync(join(projectFolder, name)))) return null;
  const hash = createHash('sha256').update(process.version);
  for (const name of names) hash.update(`\n${name}\n`).update(folderHash(join(projectFolder, name), known));
  hash.update(installedVersions(projectFolder));
  return hash.digest('hex');
}

function folderHash(folder: string, known: Known): string {
  const before = known.get(folder);
  if (before !== undefined) return before;
  const hash = createHash('sha256');
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  for (const file of files) {
    // Names count from the folder: another checkout of the same code works the same out.
    hash.update(`\n${file.slice(folder.length)}\n`).update(readFileSync(file));
  }
  const made = hash.digest('hex');
  known.set(folder, made);
  return made;
}
