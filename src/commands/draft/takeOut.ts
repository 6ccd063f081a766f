import { readFileSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { visible } from '../../problems/visible.ts';
import type { Terminal } from '../terminal.ts';

/** Takes a file out of the inbox, but only once the copy in a report holds the same bytes; others stay where they are. */
export function takeOut(
  path: string,
  copy: string,
  { contentDir, terminal }: { readonly contentDir: string; readonly terminal: Terminal },
): void {
  if (resolve(dirname(path)) !== resolve(join(contentDir, 'inbox'))) return;
  try {
    if (readFileSync(path).equals(readFileSync(copy))) rmSync(path);
    else terminal.writeError(`${visible(path)} has changed meanwhile and stays there.\n`);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    terminal.writeError(`${visible(path)} cannot be taken out of the inbox: ${why}\n`);
  }
}
