import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

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
const beside = ['package.json', 'package-lock.json'];

/** SHA-256 over all that turns a report's files into figures: our code, the libraries, Node; null without the sources. */
export function codeHash(projectFolder: string): string | null {
  return hashOfFolders(
    projectFolder,
    deciding.map((name) => `src/${name}`),
  );
}

/** As `codeHash`, over all that turns figures into pages as well. */
export function pagesHash(projectFolder: string): string | null {
  const specimens = process.env['SPECIMENS'] === undefined ? [] : ['tests/specimen-pages', 'tests/specimen'];
  return hashOfFolders(projectFolder, ['src', 'public', ...specimens]);
}

function hashOfFolders(projectFolder: string, names: readonly string[]): string | null {
  const folders = names.map((name) => join(projectFolder, name));
  if (!folders.every((folder) => existsSync(folder))) return null;
  const files = [
    ...folders.flatMap((folder) =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name))
        .sort(),
    ),
    ...beside.map((name) => join(projectFolder, name)).filter((file) => existsSync(file)),
  ];
  const hash = createHash('sha256').update(process.version);
  for (const file of files) {
    // Names count from the project: another checkout of the same code works the same out.
    hash.update(`\n${file.slice(projectFolder.length)}\n`).update(readFileSync(file));
  }
  return hash.digest('hex');
}
