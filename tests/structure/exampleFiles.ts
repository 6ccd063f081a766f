import { readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';

const shape = resolve('src/components/example.ts');

/** Whether a source shows a component to whoever works on it, and is part of no site: the examples, and their type. */
export const isExample = (file: string): boolean => file.endsWith('.example.ts') || file === shape;

/** Those of a folder. */
export const exampleFiles = (folder: string): readonly string[] =>
  readdirSync(folder)
    .map((name) => join(folder, name))
    .filter(isExample);
