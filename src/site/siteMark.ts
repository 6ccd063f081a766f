import { chmodSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { sha256 } from './contentFiles.ts';

/** The hidden file by which a folder is known to be a site of ours. */
export const siteMarkName = '.straightface-site';

/** Files and folders that a build makes within a marked folder and takes away again; ours whatever they hold. */
export const unfinishedName = '.straightface-unfinished';

const sentence =
  'A site written by Straightface. Its next build replaces the files listed here and leaves all others as they are.';

/** What the mark of a folder says. */
type SiteMark =
  | { readonly kind: 'none' }
  /** There is one that was cut short or changed: what is ours can no longer be told. */
  | { readonly kind: 'damaged' }
  /** Paths of the files that the last build wrote, with slashes. */
  | { readonly kind: 'list'; readonly paths: readonly string[] };

/** The bytes of a mark: the same for the same files in any order. */
export function siteMark(paths: readonly string[]): string {
  const list = paths
    .toSorted()
    .map((path) => JSON.stringify(path))
    .join('\n');
  return `${sentence}\n${hashOf(list)}\n${list}\n`;
}

export function readSiteMark(folder: string): SiteMark {
  let text: string;
  try {
    text = readFileSync(join(folder, siteMarkName), 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return { kind: 'none' };
    return { kind: 'damaged' };
  }
  const [first, hash, ...rest] = text.split('\n');
  const list = rest.slice(0, -1).join('\n');
  if (first !== sentence || rest.at(-1) !== '' || hash !== hashOf(list)) return { kind: 'damaged' };
  const paths = list === '' ? [] : list.split('\n').map((line): string => JSON.parse(line));
  // Files are deleted by this list: none may lead out of the folder.
  if (paths.some((path) => path === '' || posix.isAbsolute(path) || /(^|[/\\])\.\.([/\\]|$)/.test(path)))
    return { kind: 'damaged' };
  return { kind: 'list', paths };
}

const hashOf = (text: string): string => sha256(new TextEncoder().encode(text));

/** Paths, with slashes, of all files below a folder but its mark; a link counts as a file and is not followed. */
export function filesBelow(folder: string): readonly string[] {
  return entriesBelow(folder, () => true)
    .filter(({ isFolder, path }) => !isFolder && path !== siteMarkName)
    .map(({ path }) => path);
}

/** Paths, with slashes, of what lies in a folder and is not of the listed files; of a foreign folder only itself. */
export function foreignIn(folder: string, paths: readonly string[]): readonly string[] {
  const files = new Set([...paths, siteMarkName]);
  const folders = foldersOf(paths);
  const isOwn = ({ path, isFolder }: Entry): boolean =>
    path === unfinishedName || (isFolder ? folders.has(path) : files.has(path));
  return entriesBelow(folder, (entry) => isOwn(entry) && entry.path !== unfinishedName)
    .filter((entry) => !isOwn(entry))
    .map(({ path }) => path)
    .sort();
}

/** The folders in which files lie, with slashes; the outermost itself not among them. */
export function foldersOf(paths: readonly string[]): ReadonlySet<string> {
  const folders = new Set<string>();
  for (const path of paths) {
    for (let at = posix.dirname(path); at !== '.' && !folders.has(at); at = posix.dirname(at))
      folders.add(at);
  }
  return folders;
}

/** Whether the names in a folder are those of one that holds nothing of anybody's. */
export const isEmptySite = (names: readonly string[]): boolean =>
  names.every((name) => name === unfinishedName);

/**
 * Puts the mark of a site into a freshly built folder and makes its files and folders as readable as the umask says: what
 * was copied came with the permissions of where it was.
 *
 * @param umask bits that no file gets
 */
export function markSite(folder: string, umask: number): void {
  chmodSync(folder, 0o777 & ~umask);
  const entries = entriesBelow(folder, () => true);
  for (const { path, isFolder } of entries)
    chmodSync(join(folder, path), (isFolder ? 0o777 : 0o666) & ~umask);
  const paths = entries.filter(({ isFolder, path }) => !isFolder && path !== siteMarkName);
  writeFileSync(join(folder, siteMarkName), siteMark(paths.map(({ path }) => path)), { mode: 0o666 });
}

interface Entry {
  readonly path: string;
  readonly isFolder: boolean;
}

function entriesBelow(folder: string, isEntered: (entry: Entry) => boolean): Entry[] {
  const found: Entry[] = [];
  const waiting = [''];
  for (let within = waiting.pop(); within !== undefined; within = waiting.pop()) {
    for (const entry of readdirSync(join(folder, within), { withFileTypes: true })) {
      const own = { path: posix.join(within, entry.name), isFolder: entry.isDirectory() };
      found.push(own);
      if (own.isFolder && isEntered(own)) waiting.push(own.path);
    }
  }
  return found;
}
