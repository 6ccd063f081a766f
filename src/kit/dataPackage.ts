import { createHash } from 'node:crypto';
import type { Source } from '../intake/authored/source.ts';
import { interestSentences } from '../prose/interest.ts';
import { shortUnit } from '../prose/readerUnits.ts';
import { metrics } from '../trade/metrics.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { findingsJson } from './findingsJson.ts';
import { publisherOf } from './interestInShort.ts';
import { publishedColumns } from './publishedColumns.ts';
import type { Report } from './report.ts';
import { guarded, shotsCsv } from './shotsCsv.ts';

interface Field {
  readonly name: string;
  readonly type: 'string' | 'number' | 'integer';
  readonly description: string;
  readonly constraints?: { readonly required?: boolean; readonly enum?: readonly string[] };
}

/** `datapackage.json` (Data Package, version 2): what the columns of `shots.csv` mean, and its bytes and hash. */
export function dataPackage(report: Report): string {
  const { source, findings } = report;
  const { front, shop, slug } = source;
  const absolute = absoluteAddress(shop);
  const csv = shotsCsv(report);
  const head = csv.slice(0, csv.indexOf('\r\n'));
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
    version: `1.0.${front.corrections.length}`,
    created: `${front.published ?? front.date}T00:00:00Z`,
    contributors: [{ title: publisherOf(report), roles: ['publisher'] }],
    sources: source.files.map(({ name }) => ({ title: `Session file ${name}` })),
    resources: [
      {
        name: 'shots',
        type: 'table',
        path: 'shots.csv',
        title: 'Every shot, those left out with their reason',
        format: 'csv',
        mediatype: 'text/csv',
        encoding: 'utf-8',
        ...size(csv),
        schema: {
          $schema: 'https://datapackage.org/profiles/2.0/tableschema.json',
          fields: fields(report, head),
          missingValues: [''],
        },
      },
      {
        name: 'findings',
        path: 'findings.json',
        title: 'What was worked out from them, SI units',
        format: 'json',
        mediatype: 'application/json',
        encoding: 'utf-8',
        ...size(findingsJson(findings)),
      },
    ],
  };
  return `${JSON.stringify(described, null, 1)}\n`;
}

function size(text: string): { readonly bytes: number; readonly hash: string } {
  const bytes = Buffer.from(text, 'utf8');
  return { bytes: bytes.length, hash: `sha256:${createHash('sha256').update(bytes).digest('hex')}` };
}

/** One field a column of `shots.csv`, named by its heading. */
function fields({ session, source }: Report, head: string): readonly Field[] {
  const columns = publishedColumns(session);
  const meanings: readonly Omit<Field, 'name'>[] = [
    { type: 'string', description: 'Who hit, without a name.', constraints: { required: true } },
    {
      type: 'string',
      description: 'Number of the shot in the session file, else its place.',
      constraints: { required: true },
    },
    { type: 'string', description: 'Turn in which every one was hit once, where the file has it.' },
    {
      type: 'string',
      description: `The ${source.front.varied} hit.`,
      constraints: { required: true, enum: names(source) },
    },
    ...columns.map(({ metric, unit, class: kind }): Omit<Field, 'name'> => {
      const { name, positive } = metrics[metric];
      const sign = positive === null ? '' : ` Positive: ${positive}.`;
      const inUnit = shortUnit(unit) === '' ? 'no unit' : unit === 'deg' ? 'degrees' : shortUnit(unit);
      return { type: 'number', description: `${name}, ${inUnit}, ${kind}.${sign}` };
    }),
    {
      type: 'string',
      description: '"yes" for a shot left out of every figure.',
      constraints: { enum: ['yes'] },
    },
    { type: 'string', description: 'The rule by which it was left out, and why.' },
  ];
  const headings = headingCells(head);
  if (headings.length !== meanings.length) throw new Error('Every column of shots.csv needs a meaning.');
  return meanings.map((meaning, index) => ({ name: headings[index] ?? '', ...meaning }));
}

function names({ front }: Source): readonly string[] {
  return front.contenders.map(({ short, label }) => guarded(short ?? label));
}

/** Cells of the heading row; ours are quoted only where they hold a comma or a quote. */
function headingCells(head: string): readonly string[] {
  return [...head.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, plain]) =>
    quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'),
  );
}
