import { readdirSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { exportsAndReads } from './exportsAndReaders.ts';

const src = resolve('src');

const files = readdirSync(src, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.(ts|astro|mjs)$/.test(entry.name))
  .map(({ parentPath, name }) => join(parentPath, name));
const parts = files.map((file) => ({ file, ...exportsAndReads(file) }));

/** Astro reads the exports of a page by their names. */
const isRead = (() => {
  const reads = new Set(parts.flatMap((part) => part.reads.map(({ file, name }) => `${file} ${name}`)));
  return (file: string, name: string): boolean =>
    reads.has(`${file} ${name}`) || reads.has(`${file} *`) || file.startsWith(join(src, 'pages'));
})();

const unread = parts.flatMap(({ file, exported }) =>
  exported.filter((name) => !isRead(file, name)).map((name) => `${relative(src, file)} ${name}`),
);

describe('the exports of src', () => {
  test('have each a reader in src: what only tests read is not exported', () => {
    expect(unread).toEqual([]);
  });
});
