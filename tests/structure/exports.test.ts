import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { exampleFiles, isExample } from './exampleFiles.ts';
import { exportsAndReads } from './exportsAndReaders.ts';

const src = resolve('src');

const sourcesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:ts|astro|mjs)$/.test(entry.name))
    .map(({ parentPath, name }) => join(parentPath, name));

/** What the framework and the module of the pages read by its name, without an import. */
const readByName = new Set(['getStaticPaths', 'GET', 'givenSite']);

const readIn = (parts: readonly ReturnType<typeof exportsAndReads>[]): ReadonlySet<string> =>
  new Set(parts.flatMap(({ reads }) => reads.map(({ file, name }) => `${file} ${name}`)));

/** How often a file has a name. */
const timesIn = (file: string, name: string): number =>
  readFileSync(file, 'utf8').match(new RegExp(`\\b${name}\\b`, 'g'))?.length ?? 0;

/** Examples of page components are read by their place, and read as tests do. */
const parts = sourcesIn(src)
  .filter((file) => !isExample(file))
  .map((file) => ({ file, ...exportsAndReads(file) }));
/** Beside `src` itself the framework's configuration, and what writes the reference of keys. */
const inSrc = readIn([
  ...parts,
  ...[resolve('astro.config.mjs'), ...sourcesIn(resolve('tests/readme'))].map(exportsAndReads),
]);
const inTests = readIn(
  [...sourcesIn(resolve('tests')), ...exampleFiles(resolve('src/components'))].map(exportsAndReads),
);
const unread = parts.flatMap(({ file, exported }) =>
  exported
    .filter((name) => !readByName.has(name) && !inSrc.has(`${file} ${name}`) && !inSrc.has(`${file} *`))
    .map((name) => ({ file, name, path: `${relative(src, file)}: ${name}` })),
);

test('every export is read by another file of src, or tried by a test', () => {
  expect(unread.filter(({ file, name }) => !inTests.has(`${file} ${name}`)).map(({ path }) => path)).toEqual(
    [],
  );
  expect(inSrc.size).toBeGreaterThan(2000);
});

test('nothing is there for tests alone', () => {
  expect(unread.filter(({ file, name }) => timesIn(file, name) < 2).map(({ path }) => path)).toEqual([]);
});
