import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { threadId } from 'node:worker_threads';

/** Writes a file of a cache: a reader sees all of it or none, and a process killed meanwhile leaves a name nobody reads. */
export function writeWhole(file: string, content: string | Uint8Array): void {
  mkdirSync(dirname(file), { recursive: true });
  const unfinished = `${file}.${process.pid}.${threadId}`;
  try {
    writeFileSync(unfinished, content);
    renameSync(unfinished, file);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
}
