import { resolve } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { structuredData, type Node } from '../../src/kit/structuredData.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { oddOnes, reports } from './content.ts';
import { manyReports } from './manyReports.ts';

/**
 * What is wrong with linked data by the published vocabulary of schema.org, as the package schema-dts 2.1.0 puts it into
 * types: unknown properties and types, and values of a kind that a property does not take.
 */
function wrongBySchemaOrg(all: readonly Node[]): readonly string[] {
  const file = resolve('tests/kit/linked-data-to-check.ts');
  const text = [
    "import type { Article, Dataset, Graph } from 'schema-dts';",
    ...all.map((data, index) => {
      const [article, dataset] = data['@graph'] as readonly Node[];
      return [
        `export const a${index}: Article = ${JSON.stringify(article)};`,
        `export const d${index}: Dataset = ${JSON.stringify(dataset)};`,
        `export const g${index}: Graph = ${JSON.stringify(data)};`,
      ].join('\n');
    }),
  ].join('\n');
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
  const program = ts.createProgram([file], options, host);
  return ts
    .getPreEmitDiagnostics(program)
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'));
}

const many = loadSite(manyReports()).reports;
const noAddress = loadSite(manyReports('name: Shop\n')).reports;
const all = [...reports, ...oddOnes, ...many, ...noAddress.slice(0, 2)].map(structuredData);

test('every report’s linked data are in the words of schema.org, and the check can fail', () => {
  expect(all.length).toBeGreaterThan(15);
  expect(JSON.stringify(all)).toContain('CorrectionComment');
  const [first] = all;
  const [article = {}, dataset = {}] = (first?.['@graph'] ?? []) as readonly Node[];
  const wrong: Node = { '@context': 'https://schema.org', '@graph': [{ ...article, stars: 5 }, dataset] };
  expect(wrongBySchemaOrg(all)).toEqual([]);
  expect(wrongBySchemaOrg([wrong]).join('\n')).toContain(`'"stars"' does not exist`);
});

test('no rating, review or offer of what the shop sells', () => {
  expect(JSON.stringify(all)).not.toMatch(/rating|review|offer/i);
});
