import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { problemKinds } from '../../src/problems/kinds.ts';
import { isExample } from '../structure/exampleFiles.ts';

/** What a kind is named by in a comment counts for nothing. */
const withoutComments = (code: string): string =>
  code.replaceAll(/(^|\s)\/\/.*$/gm, '$1').replaceAll(/^\s*\/?\*.*$/gm, '');

/** All TypeScript of a folder but for one file. */
function codeOf(folder: string, but: string): string {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => resolve(entry.parentPath, entry.name))
    .filter((path) => path !== resolve(but) && !isExample(path))
    .map((path) => withoutComments(readFileSync(path, 'utf8')))
    .join('\n');
}

const kinds = Object.keys(problemKinds);
const notAmong = (words: readonly string[]): readonly string[] => {
  const known = new Set(words);
  return kinds.filter((kind) => !known.has(kind));
};

test('every kind of problem is raised somewhere', () => {
  const code = codeOf('src', 'src/problems/kinds.ts');
  expect(notAmong([...code.matchAll(/'([a-z0-9-]+)'/g)].map(([, word = '']) => word))).toEqual([]);
});

test('every kind of problem is named in a test', () => {
  const code = codeOf('tests', 'tests/problems/kindsInUse.test.ts');
  expect(notAmong(code.match(/[a-z0-9]+(?:-[a-z0-9]+)*/g) ?? [])).toEqual([]);
});
