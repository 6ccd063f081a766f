import { createHash } from 'node:crypto';
import { interestSentences } from '../prose/interest.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { chartFiles } from './chartFiles.ts';
import { dataFiles, type DataTools } from './dataFiles.ts';
import type { DescribedFile } from './describedFile.ts';
import { publisherOf } from './interestInShort.ts';
import { keywordsOf } from './keywords.ts';
import { licenceEntry, type LicenceEntry } from './licences.ts';
import type { Report } from './report.ts';
import { reportVersion } from './reportVersion.ts';
import { shotColumns } from './shotColumns.ts';
import { tableSchema } from './tableSchema.ts';

/** `datapackage.json` (Data Package, version 2): what the columns of `shots.csv` mean, and the files beside it. */
export function dataPackage(report: Report, tools: DataTools): string {
  const { source } = report;
  const { front, shop, slug } = source;
  const absolute = absoluteAddress(shop);
  const { shots, ...others } = dataFiles(report, tools);
  const files: readonly DescribedFile[] = [
    { ...shots, schema: tableSchema(shotColumns(report).map(({ field }) => field)), of: 'data' },
    ...Object.values(others).map((file) => ({ ...file, schema: null, of: 'data' as const })),
    ...chartFiles(report),
  ];
  const { licenceData, licenceCharts } = shop?.reuse ?? {};
  const terms = absolute === null ? null : { path: absolute('/about/#charts'), title: 'Terms of the charts' };
  const licences = {
    data: licenceData === undefined ? null : licenceEntry(licenceData),
    charts: licenceCharts === undefined ? terms : licenceEntry(licenceCharts),
  };
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
    image: 'share.png',
    keywords: keywordsOf(report),
    invented: front.inventedData,
    // Of `ucum` in the fields of every table.
    unitCodes: 'https://ucum.org/ucum',
    // What a resource does not say of itself it inherits, so the data's licence is not said of charts without terms.
    ...(licences.charts === null ? {} : licensesOf(licences.data)),
    contributors: [{ title: publisherOf(report), roles: ['publisher'] }],
    sources: source.files.map(({ name }) => ({ title: `Session file ${name}` })),
    resources: files.map((file) => resource(file, licences[file.of])),
  };
  return `${JSON.stringify(described, null, 1)}\n`;
}

function resource({ text, schema, of: _of, ...described }: DescribedFile, licence: LicenceEntry | null) {
  return {
    ...described,
    ...licensesOf(licence),
    ...(text === null ? {} : weightOf(text)),
    ...(schema === null ? {} : { type: 'table', schema }),
  };
}

function licensesOf(licence: LicenceEntry | null) {
  return licence === null ? {} : { licenses: [licence] };
}

function weightOf(text: string) {
  const bytes = Buffer.from(text, 'utf8');
  const hash = `sha256:${createHash('sha256').update(bytes).digest('hex')}`;
  return { encoding: 'utf-8', bytes: bytes.length, hash };
}
