import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { readSealed, writeSealed } from './sealed.ts';
import { markAsUsed } from './markAsUsed.ts';

/**
 * The one-file edition of a page, kept by the page it is made of: reading a page with a parser takes long beside
 * copying one that is as it was. What a page names (styles, fonts, pictures) has the hash of its bytes in its address.
 *
 * @param code hash of the code that makes it
 */
export function cachedEdition(page: string, code: string, folder: string, make: () => string): string {
  const key = createHash('sha256').update(`${code}\n`).update(page).digest('hex');
  const file = join(folder, `${key}.html.sealed`);
  const kept = readSealed(file, key);
  if (kept !== null) {
    markAsUsed(file);
    return new TextDecoder().decode(kept);
  }
  const made = make();
  writeSealed(file, key, new TextEncoder().encode(made));
  return made;
}
