import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Disk } from '../writing/disk.ts';
import { removeQuietly } from '../writing/ownNames.ts';
import { prepareNewFile, prepareReplacement, type Prepared } from '../writing/wholeFile.ts';
import type { NewText } from './openPlans.ts';
import type { NamedBytes } from './readSession.ts';

/**
 * Puts the files into the folder of a plan, and the new texts in the place of the old, in the order given. All is written
 * and synced aside first; the files are taken out again where the disk refuses. A text that somebody has saved since it was
 * read stays as it is: its name, and nothing is written. Null: done.
 *
 * @throws errors of the disk
 */
export function writePlanned(
  folder: string,
  files: readonly NamedBytes[],
  texts: readonly NewText[],
  disk: Disk,
): { readonly changed: string } | null {
  const there = new Set(readdirSync(folder));
  const added: string[] = [];
  const prepared: Prepared[] = [];
  const prepare = (each: Prepared): Prepared => {
    prepared.push(each);
    return each;
  };
  try {
    const newFiles = files
      .filter(({ name }) => !there.has(name))
      .map(({ name, bytes }) => ({ name, ...prepare(prepareNewFile(disk, join(folder, name), bytes)) }));
    const newTexts = texts.map(({ name, text }) =>
      prepare(prepareReplacement(disk, join(folder, name), text)),
    );
    const changed = texts.find(({ name, before }) => !readFileSync(join(folder, name)).equals(before));
    if (changed !== undefined) return { changed: changed.name };
    for (const { name, put } of newFiles) {
      put();
      added.push(name);
    }
    for (const { put } of newTexts) put();
  } catch (error) {
    for (const name of added) removeQuietly(disk, join(folder, name));
    throw error;
  } finally {
    for (const { discard } of prepared) discard();
  }
  return null;
}
