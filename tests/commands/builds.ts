import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';

/** Where one build reads, writes and keeps what it worked out. */
export interface Folders {
  readonly content: string;
  readonly out: string;
  readonly cache: string;
}

export interface Run {
  readonly status: number | null;
  readonly said: string;
}

const command = 'src/commands/build.ts';

const environment = (
  { content, out, cache }: Folders,
  more: Readonly<Record<string, string>>,
): NodeJS.ProcessEnv => ({
  ...process.env,
  CONTENT_DIR: content,
  OUT_DIR: out,
  CACHE_DIR: cache,
  NO_COLOR: '1',
  ...more,
});

/** `npm run build` as a person runs it: a process of its own. */
export function build(folders: Folders, more: Readonly<Record<string, string>> = {}): Run {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command], {
    cwd: resolve('.'),
    encoding: 'utf8',
    env: environment(folders, more),
  });
  return { status, said: stdout + stderr };
}

/** The same, at work while the test goes on; it may be killed. */
export function startBuild(folders: Folders): ChildProcess {
  return spawn(process.execPath, [command], {
    cwd: resolve('.'),
    env: environment(folders, {}),
    stdio: 'ignore',
  });
}

export const newFolder = (name: string): string =>
  join(mkdtempSync(join(tmpdir(), 'straightface-build-')), name);

/** Folders for a content folder: nothing built, nothing kept yet. */
export const foldersFor = (content: string): Folders => ({
  content,
  out: newFolder('site'),
  cache: newFolder('cache'),
});

/** SHA-256 of every file of a folder by its path. */
export function hashes(folder: string): Readonly<Record<string, string>> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  return Object.fromEntries(
    files.map((file) => [
      relative(folder, file),
      createHash('sha256').update(readFileSync(file)).digest('hex'),
    ]),
  );
}
