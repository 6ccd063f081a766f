import { hash } from 'node:crypto';
import { existsSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readSealed, writeSealed } from './sealed.ts';
import { filesBelow } from './siteMark.ts';

/** What is known of a copy: its hash, and the state of the file for which it was taken. */
interface KnownCopy {
  readonly sha256: string;
  readonly state: string;
}

/** Copies of pages, and Astro's own list of them, by path with slashes. */
export type PageCopies = ReadonlyMap<string, KnownCopy>;

const listKey = 'page copies';

/** The folder in which Astro keeps the copies that it may give away again; all else it keeps is about them. */
const copies = /^dist\//;

/**
 * Astro believes the copies of pages that it keeps. This takes away those that are not byte for byte what the last build
 * that ended well has left, and all of them where what Astro knows of them is not: they are then made anew.
 */
export function checkPageCopies(folder: string, listFile: string): PageCopies {
  const bytes = readSealed(listFile, listKey);
  const list: Readonly<Record<string, string>> =
    bytes === null ? {} : JSON.parse(new TextDecoder().decode(bytes));
  const known = new Map<string, KnownCopy>();
  for (const path of existsSync(folder) ? filesBelow(folder) : []) {
    const found = copyAt(join(folder, path));
    if (found?.sha256 === list[path] && found !== null) known.set(path, found);
    else if (copies.test(path)) rmSync(join(folder, path));
    else {
      rmSync(folder, { recursive: true, force: true });
      return new Map();
    }
  }
  return known;
}

/** Writes down what a build that ended well has left; files that stayed as they were are not read again. */
export function recordPageCopies(folder: string, listFile: string, before: PageCopies): void {
  const list: Record<string, string> = {};
  for (const path of existsSync(folder) ? filesBelow(folder) : []) {
    const file = join(folder, path);
    const known = before.get(path);
    list[path] = known !== undefined && known.state === stateOf(file) ? known.sha256 : sha256Of(file);
  }
  writeSealed(listFile, listKey, new TextEncoder().encode(JSON.stringify(list)));
}

/** Null for a file that cannot be read. */
function copyAt(file: string): KnownCopy | null {
  try {
    return { state: stateOf(file), sha256: sha256Of(file) };
  } catch {
    return null;
  }
}

const sha256Of = (file: string): string => hash('sha256', readFileSync(file), 'hex');

function stateOf(file: string): string {
  const { ino, size, mtimeNs, ctimeNs } = statSync(file, { bigint: true });
  return [ino, size, mtimeNs, ctimeNs].join(' ');
}
