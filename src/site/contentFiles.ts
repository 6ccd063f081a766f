import { createHash } from 'node:crypto';
import { existsSync, lstatSync, readdirSync, readFileSync, realpathSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** A content folder as its files lie on the disk; paths in problems count from it. */
export interface ContentFolder {
  readonly root: string;
  readonly exists: boolean;
  /** Text of a file, or null where there is none. */
  readonly text: (path: string) => string | null;
  /** Bytes of a file inside the folder, or null where there is none or it leads outside. */
  readonly bytes: (path: string) => Uint8Array | null;
  /** Names of the folders in a folder, sorted. */
  readonly folders: (path: string) => readonly string[];
  /** Names of the symbolic links in a folder, sorted; the empty path is the content folder itself. */
  readonly links: (path: string) => readonly string[];
  /** Names of the files in a folder, sorted. */
  readonly files: (path: string) => readonly string[];
  /** Paths of all that is no folder anywhere in a folder, hidden files and links too, sorted. */
  readonly everything: (path: string) => readonly string[];
}

export function openContentFolder(root: string): ContentFolder {
  const bytes = (path: string): Uint8Array | null => {
    const file = join(root, path);
    if (!existsSync(file) || !isInside(root, file)) return null;
    return lstatSync(realpathSync(file)).isFile() ? readFileSync(file) : null;
  };
  const list = (path: string, kind: 'file' | 'folder' | 'link'): readonly string[] => {
    const folder = join(root, path);
    if (!existsSync(folder)) return [];
    return readdirSync(folder, { withFileTypes: true })
      .filter(
        (entry) =>
          !entry.name.startsWith('.') &&
          (kind === 'file'
            ? !entry.isDirectory()
            : kind === 'link'
              ? entry.isSymbolicLink()
              : entry.isDirectory()),
      )
      .map(({ name }) => name)
      .sort();
  };
  return {
    root,
    exists: existsSync(root),
    text: (path) => {
      const found = bytes(path);
      return found === null ? null : new TextDecoder().decode(found);
    },
    bytes,
    folders: (path) => list(path, 'folder'),
    links: (path) => list(path, 'link'),
    files: (path) => list(path, 'file'),
    everything: (path) => {
      const folder = join(root, path);
      if (!existsSync(folder)) return [];
      return readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => !entry.isDirectory())
        .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll(sep, '/'))
        .sort();
    },
  };
}

/** Whether a file, links followed, still lies inside the folder. */
function isInside(root: string, file: string): boolean {
  const way = relative(realpathSync(root), realpathSync(file));
  return way !== '' && way !== '..' && !way.startsWith(`..${sep}`);
}

/** SHA-256 of a file's bytes, in hexadecimal digits. */
export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
