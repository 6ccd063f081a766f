#!/usr/bin/env node
import { spawn } from 'node:child_process';
import { existsSync, realpathSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/*
 * `straightface` as npm links it: whichever Node a machine has reads this, an old one too, and the one that comes as a
 * package runs the command, since another one works out the far digits of flights otherwise.
 */

/** The oldest Node that runs the commands where none came with the package. */
const oldest = { major: 22, minor: 18 };

/** Rooms of 8 MB for what was just made: a build takes a fifth less memory, and no more time. */
const flagsOf: Readonly<Record<string, readonly string[]>> = { build: ['--max-semi-space-size=8'] };

const typed = process.argv.slice(2);
const flags = flagsOf[typed[0] ?? ''] ?? [];
const packaged = packagedNode();

if (packaged === null && isTooOld()) {
  process.stderr.write(
    `Straightface needs Node ${oldest.major}.${oldest.minor} or newer, and this is ${process.versions.node}. ` +
      'The Node that comes with it is not installed: allow its script (allowScripts in package.json) and run npm ci, or install Node 24.\n',
  );
  process.exitCode = 1;
} else {
  const node = packaged ?? process.execPath;
  if (flags.length === 0 && node === realpathSync(process.execPath)) await import('./straightface.ts');
  else runWith(node);
}

/** The Node that npm has installed beside us; null where it is left out, or its script was not allowed to fetch it. */
function packagedNode(): string | null {
  try {
    const folder = dirname(createRequire(import.meta.url).resolve('node/package.json'));
    const file = join(folder, 'bin', process.platform === 'win32' ? 'node.exe' : 'node');
    return existsSync(file) ? realpathSync(file) : null;
  } catch {
    return null;
  }
}

function isTooOld(): boolean {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  return major < oldest.major || (major === oldest.major && minor < oldest.minor);
}

/** Runs the command in a process of its own, which gets every signal that this one gets, and ends as it ends. */
function runWith(path: string): void {
  const command = fileURLToPath(import.meta.url).replace(/launch(\.[jt]s)$/, 'straightface$1');
  const child = spawn(path, [...flags, command, ...typed], { stdio: 'inherit' });
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  const pass = (signal: NodeJS.Signals): void => void child.kill(signal);
  for (const signal of signals) process.on(signal, pass);
  child.on('error', ({ message }) => {
    process.stderr.write(
      `The Node that comes with Straightface cannot be started (${message}). Run npm ci in the folder of the project.\n`,
    );
    process.exitCode = 1;
  });
  child.on('exit', (status, signal) => {
    for (const name of signals) process.off(name, pass);
    if (signal === null) process.exitCode = status ?? 1;
    else process.kill(process.pid, signal);
  });
}
