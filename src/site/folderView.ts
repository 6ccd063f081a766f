import { lstatSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** What decisions over folders ask the disk, and nothing else. Paths are absolute. */
export interface FolderView {
  /** What stands there itself, links not followed; null where nothing does. */
  readonly kind: (path: string) => 'folder' | 'link' | 'other' | null;
  /** The path with all links followed; null where it leads nowhere. */
  readonly real: (path: string) => string | null;
  /** The same for two paths only if they are one and the same folder, however they are written; null where none is. */
  readonly identity: (path: string) => string | null;
  /** Names of all that lies in a folder, hidden ones too. */
  readonly names: (path: string) => readonly string[];
}

export const diskView: FolderView = {
  kind: (path) => {
    const found = quiet(() => lstatSync(path, { throwIfNoEntry: false }));
    if (found === undefined) return null;
    if (found.isSymbolicLink()) return 'link';
    return found.isDirectory() ? 'folder' : 'other';
  },
  real: (path) => quiet(() => realpathSync.native(path)) ?? null,
  identity: (path) => {
    const found = quiet(() => statSync(path, { throwIfNoEntry: false, bigint: true }));
    return found === undefined ? null : `${found.dev}:${found.ino}`;
  },
  names: (path) => readdirSync(path),
};

const absent = new Set(['ENOENT', 'ENOTDIR', 'ELOOP', 'ENAMETOOLONG']);

function quiet<Result>(look: () => Result | undefined): Result | undefined {
  try {
    return look();
  } catch (error) {
    if (error instanceof Error && 'code' in error && absent.has(String(error.code))) return undefined;
    throw error;
  }
}

/** Where a path leads once links are followed; what does not exist yet keeps its name below the folder that does. */
type Followed =
  | { readonly kind: 'path'; readonly path: string }
  /** A link that leads nowhere, or in a circle. */
  | { readonly kind: 'dangling'; readonly link: string }
  /** A folder of the path is no folder. */
  | { readonly kind: 'through-file'; readonly file: string };

export function followed(path: string, view: FolderView): Followed {
  const missing: string[] = [];
  for (let at = path; ; at = dirname(at)) {
    const kind = view.kind(at);
    if (kind === null && dirname(at) !== at) {
      missing.unshift(basename(at));
      continue;
    }
    const real = view.real(at);
    if (real === null) return kind === 'link' ? { kind: 'dangling', link: at } : { kind: 'path', path };
    if (missing.length > 0 && view.kind(real) === 'other') return { kind: 'through-file', file: at };
    return { kind: 'path', path: join(real, ...missing) };
  }
}

/** Whether a folder is another one or lies in it; links and casing do not hide it. */
export function isWithin(inner: string, outer: string, view: FolderView): boolean {
  for (let at = inner; ; at = dirname(at)) {
    if (isSame(at, outer, view)) return true;
    if (dirname(at) === at) return false;
  }
}

export function isSame(one: string, other: string, view: FolderView): boolean {
  const [first, second] = [view.identity(one), view.identity(other)];
  if (first !== null || second !== null) return first === second;
  // Neither is there yet, and on some disks one would be the other.
  return folded(one) === folded(other);
}

const folded = (path: string): string => path.normalize('NFC').toLowerCase();
