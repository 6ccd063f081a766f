import { rmSync, utimesSync, statSync, writeFileSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkPageCopies, recordPageCopies } from '../../src/site/pageCopies.ts';
import { everythingIn, folderOf } from '../folders/folderOf.ts';

const files = {
  'astro/dist/index.html': 'Alder carried farther',
  'astro/dist/reports/one/index.html': 'one',
  'astro/incremental-build.json': '{}',
};

interface Cache {
  readonly root: string;
  readonly astro: string;
  readonly list: string;
}

/** A cache as a build that ended well has left it. */
function recorded(): Cache {
  const root = folderOf(files);
  const cache = { root, astro: join(root, 'astro'), list: join(root, 'pages.list') };
  recordPageCopies(cache.astro, cache.list, new Map());
  return cache;
}

const copiesIn = ({ root }: Cache): readonly string[] =>
  Object.entries(everythingIn(root)).flatMap(([path, text]) =>
    text !== '(folder)' && path.startsWith('astro/') ? [path] : [],
  );

test('copies that are as they were stay', () => {
  const cache = recorded();
  expect([...checkPageCopies(cache.astro, cache.list).keys()].sort()).toEqual(
    Object.keys(files)
      .map((path) => path.slice('astro/'.length))
      .sort(),
  );
  expect(copiesIn(cache)).toEqual(Object.keys(files).sort());
});

test('a copy that was edited is taken away, also where size and date are those of before', () => {
  const cache = recorded();
  const file = join(cache.astro, 'dist/index.html');
  const { atime, mtime } = statSync(file);
  writeFileSync(file, 'Alder carried shorter');
  utimesSync(file, atime, mtime);
  expect([...checkPageCopies(cache.astro, cache.list).keys()]).not.toContain('dist/index.html');
  expect(copiesIn(cache)).toEqual(['astro/dist/reports/one/index.html', 'astro/incremental-build.json']);
});

test('a copy that a killed build has written, and one of somebody, are taken away', () => {
  const cache = recorded();
  writeFileSync(join(cache.astro, 'dist/new.html'), 'new');
  checkPageCopies(cache.astro, cache.list);
  expect(copiesIn(cache)).toEqual(Object.keys(files).sort());
});

test('two copies that were exchanged are both taken away', () => {
  const cache = recorded();
  const [one, two] = [join(cache.astro, 'dist/index.html'), join(cache.astro, 'dist/reports/one/index.html')];
  renameSync(one, `${one}.aside`);
  renameSync(two, one);
  renameSync(`${one}.aside`, two);
  checkPageCopies(cache.astro, cache.list);
  expect(copiesIn(cache)).toEqual(['astro/incremental-build.json']);
});

test.each([
  [
    'what Astro knows of them was changed',
    ({ astro }: Cache) => writeFileSync(join(astro, 'incremental-build.json'), '{ }'),
  ],
  [
    'a file lies there that nobody knows',
    ({ astro }: Cache) => writeFileSync(join(astro, 'data-store.json'), '{}'),
  ],
  ['our list was changed', ({ list }: Cache) => writeFileSync(list, 'x')],
  ['our list is gone', ({ list }: Cache) => rmSync(list)],
])('all are taken away where %s', (_what, change) => {
  const cache = recorded();
  change(cache);
  expect(checkPageCopies(cache.astro, cache.list).size).toBe(0);
  expect(copiesIn(cache)).toEqual([]);
});

test('what a build has changed is written down anew, what it has left is believed as it was known', () => {
  const cache = recorded();
  const before = checkPageCopies(cache.astro, cache.list);
  writeFileSync(join(cache.astro, 'dist/index.html'), 'Birch carried farther');
  recordPageCopies(cache.astro, cache.list, before);
  expect(checkPageCopies(cache.astro, cache.list).size).toBe(3);
  expect(copiesIn(cache)).toEqual(Object.keys(files).sort());
});

test('without any copies there is nothing to check', () => {
  const root = folderOf({});
  expect(checkPageCopies(join(root, 'astro'), join(root, 'pages.list')).size).toBe(0);
});
