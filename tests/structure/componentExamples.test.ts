import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { exampleFiles, isExample } from './exampleFiles.ts';
import { exportsAndReads } from './exportsAndReaders.ts';

/** Components that cannot stand on a page by themselves, and what tries them. */
const without: Readonly<Record<string, string>> = {
  BrandSheet: 'in the head of a page: tests/commands/brand.test.ts',
  Canonical: 'in the head of a page: tests/site/kitFeeds.test.ts',
  EarlierVersion: 'its link leads to a file that only a kept version has: tests/commands/versions.test.ts',
  FirstUse: 'changes what others put into it: tests/pages/firstUse.test.ts',
  FontPreloads: 'in the head of a page: tests/site/built.test.ts',
  InBothUnits: 'shows what a function of others gives it: the examples of Answer and FigureBody',
  KitFrame: 'its heading stands below that of a chart: the examples of KitItem',
  Language: 'in the head of a page: tests/commands/heads.test.ts',
  LicenceLink: 'in the head of a page: tests/commands/heads.test.ts',
  LinkedData: 'in the head of a page: tests/commands/heads.test.ts',
  PageLinks: 'its links lead to pages that only a long list has: tests/site/lists.test.ts',
  PageShare: 'in the head of a page: tests/cases',
  PhoneFold: 'folds what others put into it: the examples of OtherReasons, tests/site/firstScreen.test.ts',
  Places: 'on every page already',
  ReportHead: 'in the head of a report: tests/commands/heads.test.ts',
  ReportSections: 'all parts of a report below its answer: every report page',
  SiteFoot: 'on every page already',
  SiteHead: 'on every page already: tests/site/frontPage.test.ts',
};

const folder = resolve('src/components');
const files = readdirSync(folder);
const named = (ending: string): readonly string[] =>
  files.filter((name) => name.endsWith(ending)).map((name) => name.slice(0, -ending.length));
const components = named('.astro');
const shown = named('.example.ts');

test('every page component has examples beside it, or a reason why not', () => {
  expect(components.filter((name) => !shown.includes(name) && !(name in without))).toEqual([]);
  expect(components.length).toBeGreaterThan(50);
});

test('no reason is given for one that has examples or is not there', () => {
  expect(Object.keys(without).filter((name) => shown.includes(name) || !components.includes(name))).toEqual(
    [],
  );
});

test('every file of examples stands beside its component, and gives them by name', () => {
  expect(shown.filter((name) => !components.includes(name))).toEqual([]);
  for (const name of shown)
    expect([name, ...exportsAndReads(join(folder, `${name}.example.ts`)).exported]).toContain('examples');
});

test('no example is compiled into the site of a shop', () => {
  const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(?:ts|astro|mjs)$/.test(path))
    .map((path) => resolve('src', path))
    .filter((path) => !isExample(path));
  const reading = sources.filter((path) => exportsAndReads(path).reads.some(({ file }) => isExample(file)));
  expect(reading).toEqual([]);
  expect(sources.filter((path) => /\bimport\.meta\.glob\b/.test(readFileSync(path, 'utf8')))).toEqual([]);
});

test('no example is in the package', () => {
  const { files: packed }: { readonly files: readonly string[] } = JSON.parse(
    readFileSync('package.json', 'utf8'),
  );
  expect(packed).toEqual(
    expect.arrayContaining(['!src/components/*.example.ts', '!src/components/example.ts']),
  );
  expect(exampleFiles(folder).length).toBe(shown.length + 1);
});
