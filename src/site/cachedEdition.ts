import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { readSealed, writeSealed } from './sealed.ts';
import { markAsUsed } from './markAsUsed.ts';

/** What is made of whole pages and files of a site. */
export interface Edition {
  /** All that it is made of. */
  readonly of: readonly (string | Uint8Array)[];
  /** Hash of the code that makes it; null where it cannot be told, and nothing is kept. */
  readonly code: string | null;
  readonly ending: 'html' | 'zip';
  readonly make: () => Uint8Array;
}

/**
 * An edition, kept by what it is made of: reading a page with a parser, or packing files, takes long beside copying what
 * is as it was. What a page names (styles, fonts, pictures) has the hash of its bytes in its address.
 */
export function cachedEdition({ of, code, ending, make }: Edition, folder: string): Uint8Array {
  if (code === null) return make();
  const hash = createHash('sha256').update(`${code}\n`);
  // Each with its length, so that what moves from one to the next is not lost.
  for (const part of of) hash.update(`${part.length}\n`).update(part);
  const key = hash.digest('hex');
  const file = join(folder, `${key}.${ending}.sealed`);
  const kept = readSealed(file, key);
  if (kept !== null) {
    markAsUsed(file);
    return kept;
  }
  const made = make();
  writeSealed(file, key, made);
  return made;
}
