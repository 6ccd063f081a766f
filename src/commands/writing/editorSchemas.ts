import { lstatSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { editorSchema, editorSchemaNames, ownComment } from '../../intake/authored/editorSchema.ts';
import { schemaFolder } from '../../intake/authored/schemaLine.ts';
import { systemWords } from '../../problems/systemWords.ts';
import type { Disk } from './disk.ts';
import { prepareNewFile, prepareReplacement, type Prepared } from './wholeFile.ts';

/**
 * Writes the schemas that the first lines of drafts name, each where it is missing or is of another version. One that
 * somebody made by hand stays as it is. A help and no more: where the disk refuses, whatever else was written stands.
 */
export function writeEditorSchemas(contentDir: string, disk: Disk): void {
  const folder = join(contentDir, schemaFolder);
  try {
    if (lstatSync(folder, { throwIfNoEntry: false })?.isDirectory() === false) return;
    for (const name of editorSchemaNames) {
      const file = join(folder, `${name}.json`);
      const text = editorSchema(name);
      const there = ownText(file);
      if (there === text || there === 'not ours') continue;
      if (there === null) disk.mkdirSync(folder, { recursive: true });
      putIn(there === null ? prepareNewFile(disk, file, text) : prepareReplacement(disk, file, text));
    }
  } catch (error) {
    systemWords(error);
  }
}

function putIn({ put, discard }: Prepared): void {
  try {
    put();
  } finally {
    discard();
  }
}

/** A schema that is there: its text where it is ours, also of another version. A link may lead out of the folder. */
function ownText(file: string): string | 'not ours' | null {
  const found = lstatSync(file, { throwIfNoEntry: false });
  if (found === undefined) return null;
  const text = found.isFile() ? readFileSync(file, 'utf8') : '';
  return text.includes(ownComment) ? text : 'not ours';
}
