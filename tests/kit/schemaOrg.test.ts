import { resolve } from 'node:path';
import Validator from '@adobe/structured-data-validator';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { frontPageData } from '../../src/kit/frontPageData.ts';
import { breadcrumbs, type Node } from '../../src/kit/linkedData.ts';
import { structuredData } from '../../src/kit/structuredData.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { oddOnes, reports } from './content.ts';
import { manyReports } from './manyReports.ts';

/**
 * What is wrong with each of these by the published vocabulary of schema.org, as the package schema-dts 2.1.0 puts it
 * into types: unknown properties and types, and values of a kind that a property does not take.
 */
function wrongBySchemaOrg(all: readonly Node[]): readonly (readonly string[])[] {
  const file = resolve('tests/kit/linked-data-to-check.ts');
  // A line each, so that the line of a fault tells whose it is.
  const lines = all.map((data, index) =>
    [
      `export const all${index}: Vocabulary.${isGraph(data) ? 'Graph' : 'WithContext<Vocabulary.Thing>'} = ${JSON.stringify(data)};`,
      // A node by itself is held to its own type, which tells what is wrong with it.
      ...nodesOf(data).map(
        (node, at) =>
          `export const node${index}x${at}: Vocabulary.${typeOf(node)} = ${JSON.stringify(node)};`,
      ),
    ].join(' '),
  );
  const text = ["import type * as Vocabulary from 'schema-dts';", ...lines].join('\n');
  const options: ts.CompilerOptions = {
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    types: [],
  };
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.fileExists = (name) => name === file || fileExists(name);
  host.readFile = (name) => (name === file ? text : readFile(name));
  host.getSourceFile = (name, ...rest) =>
    name === file ? ts.createSourceFile(name, text, ts.ScriptTarget.ES2022) : getSourceFile(name, ...rest);
  const faults = ts.getPreEmitDiagnostics(ts.createProgram([file], options, host)).map((fault) => ({
    line: fault.file?.getLineAndCharacterOfPosition(fault.start ?? 0).line ?? 0,
    words: ts.flattenDiagnosticMessageText(fault.messageText, '\n'),
  }));
  const [elsewhere = [], ...own] = ['', ...lines].map((_, line) =>
    faults.filter((fault) => fault.line === line).map(({ words }) => words),
  );
  if (elsewhere.length > 0) throw new Error(elsewhere.join('\n'));
  return own;
}

const isGraph = (data: Node): boolean => data['@graph'] !== undefined;

const typeOf = (node: Node): string => String(node['@type']);

const nodesIn = (list: Node[string] | undefined): readonly Node[] => list as readonly Node[];

/** The nodes at the top, without the context that they share. */
function nodesOf({ '@context': _context, '@graph': graph, ...alone }: Node): readonly Node[] {
  return graph === undefined ? [alone as Node] : nodesIn(graph);
}

/** What a large search engine would find missing, as far as the validator knows the types we use. */
async function missingForSearch(data: Node): Promise<readonly string[]> {
  const jsonld = Object.groupBy(nodesOf(data), typeOf) as Record<string, Node[]>;
  const issues = await new Validator().validate({ jsonld });
  return issues.map(({ severity, issueMessage, path }) =>
    [severity, ...path.map(({ type, property }) => property ?? type), issueMessage].join(' '),
  );
}

const many = loadSite(manyReports()).reports;
const noAddress = loadSite(manyReports('name: Shop\n')).reports;
const shopOf = (of: typeof many) => of[0]?.source.shop ?? null;
const fronts = [reports, oddOnes, many].flatMap((of): readonly Node[] => {
  const words = { publisher: 'Shop & Sons', heading: 'All of it', description: 'All there is.' };
  const data = frontPageData({ ...words, shop: shopOf(of), reports: of });
  return data === null ? [] : [data];
});
const trail = breadcrumbs([
  { name: 'All reports', address: 'https://golf.example/' },
  { name: 'Two heads', address: 'https://golf.example/reports/two-heads/' },
]);
const told = [...reports, ...oddOnes, ...many, ...noAddress.slice(0, 2)].map(structuredData);
const all: readonly Node[] = [...told, ...fronts, trail];

test('the linked data of every report, of front pages and of trails are in the words of schema.org', () => {
  expect(told.length).toBeGreaterThan(15);
  expect(fronts).toHaveLength(3);
  for (const type of ['CorrectionComment', 'ImageObject', 'Grant', 'ItemList', 'WebSite', 'BreadcrumbList'])
    expect(JSON.stringify(all)).toContain(`"@type":"${type}"`);
  const [article = {}] = told.slice(0, 1).flatMap(nodesOf);
  const alone = { '@context': 'https://schema.org', ...article };
  const faults = wrongBySchemaOrg([
    ...all,
    { ...alone, stars: 5 },
    { ...alone, isAccessibleForFree: { '@type': 'Grant' } },
  ]);
  expect(faults.slice(0, -2).flat()).toEqual([]);
  // An unknown property, and a value that its property does not take.
  const [unknown = [], kind = []] = faults.slice(-2);
  expect(unknown.join('\n')).toContain(`'"stars"' does not exist`);
  expect(kind.join('\n')).toContain('isAccessibleForFree');
});

test('nothing that a search engine needs of pictures, trails, lists and publishers is missing', async () => {
  for (const data of all) expect(await missingForSearch(data)).toEqual([]);
  const [, second] = nodesIn(trail['itemListElement']);
  expect((await missingForSearch({ ...trail, itemListElement: [second ?? {}] })).join()).toMatch(
    /two ListItems/,
  );
  expect((await missingForSearch({ '@type': 'ImageObject', name: 'a' })).join()).toMatch(/ERROR.*contentUrl/);
  expect((await missingForSearch({ '@type': 'Organization' })).join()).toMatch(/ERROR.*name/);
});

test('the front page names what it lists in its order, and what became of it', () => {
  const [, , page] = fronts.slice(2).flatMap(nodesOf);
  expect(page?.['abstract']).toBe('Every shot in these reports is made up.');
  const list = page?.['mainEntity'] as Node;
  expect(list['numberOfItems']).toBe(7);
  expect(nodesIn(list['itemListElement']).slice(0, 2)).toEqual([
    {
      '@type': 'ListItem',
      position: 1,
      name: 'Withdrawn: Two heads: gone',
      url: 'https://golf.example/tests/reports/gone/',
    },
    {
      '@type': 'ListItem',
      position: 2,
      name: 'Two heads: in-blocks',
      url: 'https://golf.example/tests/reports/in-blocks/',
    },
  ]);
});

test('without an address of the site the front page has none to give', () => {
  const words = { publisher: 'Shop', heading: 'All', description: 'All.' };
  expect(frontPageData({ ...words, shop: shopOf(noAddress), reports: noAddress })).toBeNull();
});

test('whatever names the publisher says the same of it', () => {
  const named = new Set(
    JSON.stringify([...fronts.slice(2), ...many.map(structuredData)]).match(/\{"@type":"Organization".*?\}/g),
  );
  expect([...named]).toEqual([
    '{"@type":"Organization","name":"Shop & Sons","@id":"https://golf.example/tests/#publisher",' +
      '"url":"https://golf.example/tests/","correctionsPolicy":"https://golf.example/tests/about/#corrections"}',
  ]);
});

test('no rating, review or offer of what the shop sells', () => {
  expect(JSON.stringify(all)).not.toMatch(/rating|review|offer/i);
});
