import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { editorSchema, editorSchemaNames, ownComment } from '../../intake/authored/editorSchema.ts';
import { schemaFolder } from '../../intake/authored/schemaLine.ts';
import { systemCode, systemWords } from '../../problems/systemWords.ts';
import type { Disk } from './disk.ts';
import { prepareNewFile, prepareReplacement, type Prepared } from './wholeFile.ts';

/**
 * Writes the schemas that the first lines of drafts name, each where it is missing or is of another version. One that
 * somebody made by hand stays as it is. A help and no more: where the disk refuses, whatever else was written stands.
 */
export function writeEditorSchemas(contentDir: string, disk: Disk): void {
  const folder = join(contentDir, schemaFolder);
  try {
    for (const name of editorSchemaNames) {
      const file = join(folder, `${name}.json`);
      const text = editorSchema(name);
      const there = textOf(file);
      if (there === text || (there !== null && !there.includes(ownComment))) continue;
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

function textOf(file: string): string | null {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return null;
    throw error;
  }
}
