import { readdirSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { exportsAndReads } from './exportsAndReaders.ts';

/** Folders of `src` in which every export has a reader. */
const rooms = ['problems', 'trade', 'stats', 'flight', 'intake', 'findings', 'planning'];

const src = resolve('src');

const sourcesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /(?<!\.test)\.(?:ts|astro|mjs)$/.test(entry.name))
    .map(({ parentPath, name }) => join(parentPath, name));

test('every export has a reader in src, or in what writes the README: what only tests read is not exported', () => {
  const parts = sourcesIn(src).map((file) => ({ file, ...exportsAndReads(file) }));
  const readers = [...parts, ...sourcesIn(resolve('tests/readme')).map(exportsAndReads)];
  const read = new Set(readers.flatMap(({ reads }) => reads.map(({ file, name }) => `${file} ${name}`)));
  const unread = parts
    .filter(({ file }) => rooms.some((room) => file.startsWith(join(src, room, '/'))))
    .flatMap(({ file, exported }) =>
      exported
        .filter((name) => !read.has(`${file} ${name}`) && !read.has(`${file} *`))
        .map((name) => `${relative(src, file)}: ${name}`),
    );
  expect(unread).toEqual([]);
});
