import { createHash } from 'node:crypto';
import { interestSentences } from '../prose/interest.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { dataFiles, type DataFile, type DataTools } from './dataFiles.ts';
import { publisherOf } from './interestInShort.ts';
import { keywordsOf } from './keywords.ts';
import { licenceEntry } from './licences.ts';
import type { Report } from './report.ts';
import { reportVersion } from './reportVersion.ts';
import { shotColumns } from './shotColumns.ts';

/** `datapackage.json` (Data Package, version 2): what the columns of `shots.csv` mean, and the files beside it. */
export function dataPackage(report: Report, tools: DataTools): string {
  const { source } = report;
  const { front, shop, slug } = source;
  const absolute = absoluteAddress(shop);
  const { shots, ...others } = dataFiles(report, tools);
  const licence = shop?.reuse.licenceData;
  const described = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    // Names of packages are lower case without spaces.
    name: slug.toLowerCase().replaceAll(/[^a-z0-9._-]/g, '-'),
    title: front.title,
    description:
      `${front.question} ${front.inventedData ? 'Invented data. ' : ''}` +
      `Interest of the publisher: ${interestSentences(source).join(' ')}` +
      (shop?.reuse.terms === undefined ? '' : ` Reuse: ${shop.reuse.terms}`),
    ...(absolute === null ? {} : { homepage: absolute(`/reports/${slug}/`) }),
    version: reportVersion(source),
    created: `${front.published ?? front.date}T00:00:00Z`,
    keywords: keywordsOf(report),
    invented: front.inventedData,
    ...(licence === undefined ? {} : { licenses: [licenceEntry(licence)] }),
    contributors: [{ title: publisherOf(report), roles: ['publisher'] }],
    sources: source.files.map(({ name }) => ({ title: `Session file ${name}` })),
    resources: [
      {
        ...resource(shots),
        type: 'table',
        schema: {
          $schema: 'https://datapackage.org/profiles/2.0/tableschema.json',
          fields: shotColumns(report).map(({ field }) => field),
          missingValues: [''],
        },
      },
      ...Object.values(others).map(resource),
    ],
  };
  return `${JSON.stringify(described, null, 1)}\n`;
}

function resource({ text, ...described }: DataFile) {
  const bytes = Buffer.from(text, 'utf8');
  const hash = `sha256:${createHash('sha256').update(bytes).digest('hex')}`;
  return { ...described, encoding: 'utf-8', bytes: bytes.length, hash };
}
