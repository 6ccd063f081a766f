import { createHash } from 'node:crypto';
import * as fs from 'node:fs';
import { join, relative, sep } from 'node:path';
import { decodeText } from '../intake/authored/decodeText.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { systemCode, systemWords } from '../problems/systemWords.ts';
import { sizeLimit } from './sizeLimits.ts';

/** What reading a file gave: null without a problem where there is none, null with one where it cannot be read. */
export interface FileRead<Content> {
  readonly content: Content | null;
  readonly problems: readonly Problem[];
}

/** A content folder as its files lie on the disk; paths in problems count from it. Nothing of it throws. */
export interface ContentFolder {
  readonly root: string;
  readonly exists: boolean;
  /** Text of a file; what is not UTF-8 is read as what it is, with a warning. */
  readonly text: (path: string) => FileRead<string>;
  /** Bytes of a file inside the folder; none where it leads outside. Larger ones than `sizeLimit` are refused. */
  readonly bytes: (path: string) => FileRead<Uint8Array>;
  /** Size of a file inside the folder, bytes; null where there is none, or it leads outside. */
  readonly size: (path: string) => number | null;
  /** SHA-256 of a file inside the folder, read in pieces; null where there is none, or it cannot be read. */
  readonly hash: (path: string) => string | null;
  /** Names of the folders in a folder, sorted. */
  readonly folders: (path: string) => readonly string[];
  /** Names of the symbolic links in a folder, sorted; the empty path is the content folder itself. */
  readonly links: (path: string) => readonly string[];
  /** Names of the files in a folder, sorted. */
  readonly files: (path: string) => readonly string[];
  /** Paths of all that is no folder anywhere in a folder, hidden files and links too, sorted; null where that cannot be told. */
  readonly everything: (path: string) => readonly string[] | null;
  /** Why a folder that is there cannot be listed. */
  readonly troubleWith: (path: string) => readonly Problem[];
}

/** What is asked of the disk; tests pass a disk that fails. */
export type ReadingDisk = Pick<typeof fs, 'statSync' | 'realpathSync' | 'readFileSync' | 'readdirSync'>;

export function openContentFolder(root: string, disk: ReadingDisk = fs): ContentFolder {
  const bytes = (path: string): FileRead<Uint8Array> => {
    try {
      const size = sizeInside(root, path, disk);
      if (size === null) return nothing;
      const { most, cure } = sizeLimit(path);
      if (size > most) return refused(tooLarge(path, size, most, cure));
      return { content: disk.readFileSync(join(root, path)), problems: [] };
    } catch (error) {
      return isAbsent(error) ? nothing : refused(unreadable('file-unreadable', path, error));
    }
  };
  const entries = (path: string): readonly fs.Dirent[] => {
    try {
      return disk.readdirSync(join(root, path), { withFileTypes: true });
    } catch (error) {
      // Told by `troubleWith`.
      systemWords(error);
      return [];
    }
  };
  const list = (path: string, kind: 'file' | 'folder' | 'link'): readonly string[] =>
    entries(path)
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
  return {
    root,
    exists: fs.existsSync(root),
    text: (path) => textOf(path, bytes(path)),
    bytes,
    size: (path) => orNull(() => sizeInside(root, path, disk)),
    hash: (path) =>
      orNull(() => (sizeInside(root, path, disk) === null ? null : hashInPieces(join(root, path)))),
    folders: (path) => list(path, 'folder'),
    links: (path) => list(path, 'link'),
    files: (path) => list(path, 'file'),
    everything: (path) =>
      orNull(() =>
        disk
          .readdirSync(join(root, path), { recursive: true, withFileTypes: true })
          .filter((entry) => !entry.isDirectory())
          .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll(sep, '/'))
          .sort(),
      ),
    troubleWith: (path) => {
      try {
        disk.readdirSync(join(root, path));
        return [];
      } catch (error) {
        const missing = ['ENOENT', 'ENAMETOOLONG'].includes(systemCode(error) ?? '');
        return missing ? [] : [unreadable('folder-unreadable', path || root, error)];
      }
    },
  };
}

const nothing: FileRead<never> = { content: null, problems: [] };
const refused = (problem: Problem): FileRead<never> => ({ content: null, problems: [problem] });

/** The text in bytes that were read. */
export function textOf(path: string, read: FileRead<Uint8Array>): FileRead<string> {
  if (read.content === null) return { content: null, problems: read.problems };
  const { text, problems } = decodeText(path, read.content);
  return { content: text, problems: [...read.problems, ...problems] };
}

/** Null where there is no file, or it leads outside. */
function sizeInside(root: string, path: string, disk: ReadingDisk): number | null {
  const file = join(root, path);
  const found = disk.statSync(file);
  return found.isFile() && isInside(root, file, disk) ? found.size : null;
}

/** Whether a file, links followed, still lies inside the folder. */
function isInside(root: string, file: string, disk: ReadingDisk): boolean {
  const way = relative(disk.realpathSync(root), disk.realpathSync(file));
  return way !== '' && way !== '..' && !way.startsWith(`..${sep}`);
}

/** Whether an error says that there is no such file: names that no disk could hold are not there either. */
function isAbsent(error: unknown): boolean {
  const code = systemCode(error);
  if (code !== null) return ['ENOENT', 'ENOTDIR', 'ENAMETOOLONG'].includes(code);
  return error instanceof Error && 'code' in error && error.code === 'ERR_INVALID_ARG_VALUE';
}

function orNull<Value>(work: () => Value | null): Value | null {
  try {
    return work();
  } catch (error) {
    if (!isAbsent(error)) systemWords(error);
    return null;
  }
}

function tooLarge(file: string, size: number, most: number, cure: string): Problem {
  return makeProblem(
    'file-too-large',
    { file },
    { expected: `at most ${most / 1_000_000} MB`, found: `${(size / 1_000_000).toFixed(1)} MB`, cure },
  );
}

function unreadable(kind: 'file-unreadable' | 'folder-unreadable', file: string, error: unknown): Problem {
  const what = kind === 'file-unreadable' ? 'file' : 'folder';
  const cure =
    systemCode(error) === 'ENOTDIR'
      ? 'Put a folder in its place, or name the right one.'
      : `Give whoever runs the command the right to read it, or put a good copy of the ${what} in its place.`;
  return makeProblem(
    kind,
    { file },
    {
      expected: `a ${what} that can be read`,
      found: systemWords(error),
      cure,
    },
  );
}

/** Bytes read at a time. */
const piece = 1 << 20;

function hashInPieces(file: string): string {
  const hash = createHash('sha256');
  const buffer = Buffer.alloc(piece);
  const opened = fs.openSync(file, 'r');
  try {
    for (let read = fs.readSync(opened, buffer); read > 0; read = fs.readSync(opened, buffer))
      hash.update(buffer.subarray(0, read));
  } finally {
    fs.closeSync(opened);
  }
  return hash.digest('hex');
}

/** SHA-256 of a file's bytes, in hexadecimal digits. */
export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
