import { createHash } from 'node:crypto';
import { Ajv2019 } from 'ajv/dist/2019.js';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { dataPackage } from '../../src/kit/dataPackage.ts';
import { chartData } from '../../src/kit/chartData.ts';
import { dataFiles } from '../../src/kit/dataFiles.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { shotsCsv } from '../../src/kit/shotsCsv.ts';
import { dataTools } from '../../src/site/dataTools.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { metricIds } from '../../src/trade/metrics.ts';
import { ucumCodes } from '../../src/trade/ucum.ts';
import { units } from '../../src/trade/units.ts';
import { oddOnes, reports } from './content.ts';
import { manyReports } from './manyReports.ts';

/**
 * What the Data Package standard, version 2 (datapackage.org, sections Data Package, Data Resource and Table Schema),
 * requires of a package such as ours, put down here as a JSON Schema of our own. What it demands of packages and
 * resources was compared with the published profile 2.0 (profiles/target/2.0/datapackage.json of the standard's
 * repository), which is not in the project; what it demands of fields with the text of the standard. Stricter where that leaves a choice: every property named, none besides.
 */
const licenses = {
  type: 'array',
  minItems: 1,
  items: {
    type: 'object',
    additionalProperties: false,
    required: ['path'],
    properties: {
      name: { type: 'string', pattern: '^[A-Za-z0-9.+-]+$' },
      path: { type: 'string', pattern: '^https?://' },
      title: { type: 'string', minLength: 3 },
    },
  },
} as const;

const profile = {
  type: 'object',
  additionalProperties: false,
  required: [
    ...['$schema', 'name', 'title', 'description', 'version', 'created', 'contributors', 'resources'],
    ...['keywords', 'invented'],
  ],
  properties: {
    $schema: { const: 'https://datapackage.org/profiles/2.0/datapackage.json' },
    name: { type: 'string', pattern: '^[a-z0-9._-]+$' },
    title: { type: 'string', minLength: 1 },
    description: { type: 'string', minLength: 1 },
    homepage: { type: 'string', pattern: '^https?://' },
    version: { type: 'string', pattern: '^\\d+\\.\\d+\\.\\d+$' },
    created: { type: 'string', pattern: '^\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\dZ$' },
    keywords: { type: 'array', minItems: 3, uniqueItems: true, items: { type: 'string', minLength: 1 } },
    image: { type: 'string', pattern: '^[^/.].*\\.png$' },
    // Not of the standard, which allows further properties.
    invented: { type: 'boolean' },
    unitCodes: { type: 'string', pattern: '^https?://' },
    licenses,
    contributors: {
      type: 'array',
      minItems: 1,
      items: {
        type: 'object',
        additionalProperties: false,
        required: ['title'],
        properties: {
          title: { type: 'string' },
          roles: { type: 'array', minItems: 1, items: { type: 'string' } },
        },
      },
    },
    sources: {
      type: 'array',
      minItems: 1,
      items: {
        type: 'object',
        additionalProperties: false,
        minProperties: 1,
        properties: { title: { type: 'string' } },
      },
    },
    resources: {
      type: 'array',
      minItems: 1,
      items: {
        type: 'object',
        additionalProperties: false,
        required: ['name', 'path', 'title', 'format', 'mediatype'],
        dependentRequired: { schema: ['type', 'bytes'], bytes: ['encoding', 'hash'] },
        properties: {
          name: { type: 'string', pattern: '^[a-z0-9._-]+$' },
          type: { const: 'table' },
          // No absolute and no parent path (Data Resource, "path").
          path: { type: 'string', pattern: '^(?!/)(?!.*\\.\\.)[^~]+$' },
          title: { type: 'string', minLength: 3 },
          description: { type: 'string', minLength: 10 },
          licenses,
          format: { type: 'string' },
          mediatype: { type: 'string', pattern: '^(.+)/(.+)$' },
          encoding: { const: 'utf-8' },
          bytes: { type: 'integer', minimum: 1 },
          hash: { type: 'string', pattern: '^[^:]+:[a-fA-F0-9]+$' },
          schema: {
            type: 'object',
            additionalProperties: false,
            required: ['fields'],
            properties: {
              $schema: { const: 'https://datapackage.org/profiles/2.0/tableschema.json' },
              missingValues: { type: 'array', items: { type: 'string' } },
              fields: {
                type: 'array',
                minItems: 1,
                items: {
                  type: 'object',
                  additionalProperties: false,
                  required: ['name', 'type', 'description'],
                  dependentRequired: { unit: ['ucum'], metric: ['unit', 'toSI', 'class'] },
                  properties: {
                    name: { type: 'string', minLength: 1 },
                    type: { enum: ['string', 'number', 'integer'] },
                    description: { type: 'string', minLength: 5 },
                    // Not of the standard, which allows further properties.
                    metric: { enum: metricIds },
                    unit: { enum: Object.keys(units) },
                    ucum: { enum: Object.values(ucumCodes) },
                    toSI: { type: 'number', exclusiveMinimum: 0 },
                    class: { enum: ['measured', 'derived', 'modelled', 'estimated'] },
                    calculatedFrom: {
                      type: 'array',
                      minItems: 2,
                      maxItems: 2,
                      items: { enum: metricIds },
                    },
                    constraints: {
                      type: 'object',
                      additionalProperties: false,
                      properties: {
                        required: { type: 'boolean' },
                        enum: { type: 'array', minItems: 1, uniqueItems: true, items: { type: 'string' } },
                      },
                    },
                  },
                },
              },
            },
          },
        },
      },
    },
  },
} as const;

interface Field {
  readonly name: string;
  readonly type: string;
  readonly constraints?: { readonly required?: boolean; readonly enum?: readonly string[] };
}

interface Package {
  readonly homepage?: string;
  readonly resources: readonly {
    readonly name: string;
    readonly path: string;
    readonly licenses?: readonly { readonly name?: string; readonly path: string }[];
    readonly bytes?: number;
    readonly hash?: string;
    readonly schema?: { readonly fields: readonly Field[]; readonly missingValues: readonly string[] };
  }[];
}

const validate = new Ajv2019({ strict: true, allErrors: true }).compile<Package>(profile);
const all = [...reports, ...oddOnes, ...loadSite(manyReports()).reports];

describe.each(all.map((report) => [report.source.slug, report] as const))('%s', (_slug, report) => {
  const described: unknown = JSON.parse(dataPackage(report, dataTools));

  test('has what a Data Package, version 2, must have', () => {
    validate(described);
    expect(validate.errors ?? []).toEqual([]);
  });

  test('bytes and hashes are those of the files', () => {
    if (!validate(described)) throw new Error('not valid');
    const data = Object.values(dataFiles(report, dataTools)).map(({ path, text }) => [path, text] as const);
    expect(data.map(([path]) => path)).toEqual([
      ...['shots.csv', 'findings.json', 'reproduce.R', 'reproduce.py'],
    ]);
    const charts = kitOf(report).offered.flatMap(({ figure }) => {
      const { csv, json } = chartData(report, figure);
      const named = (ending: string, text: string | null) => [`charts/${figure.id}.${ending}`, text] as const;
      return [named('csv', csv), named('json', json), named('svg', null), named('png', null)];
    });
    const files = new Map<string, string | null>([...data, ...charts]);
    expect(described.resources.map(({ path }) => path)).toEqual([...files.keys()]);
    expect(new Set(described.resources.map(({ name }) => name)).size).toBe(files.size);
    for (const { path, bytes, hash } of described.resources) {
      const text = files.get(path) ?? null;
      if (text === null) {
        expect([bytes, hash]).toEqual([undefined, undefined]);
        continue;
      }
      const content = Buffer.from(text, 'utf8');
      expect(bytes).toBe(content.length);
      expect(hash).toBe(`sha256:${createHash('sha256').update(content).digest('hex')}`);
    }
  });

  test('every cell of every table reads as its field says, and keeps its constraints (Table Schema)', () => {
    if (!validate(described)) throw new Error('not valid');
    const texts = new Map([
      ['shots.csv', shotsCsv(report)],
      ...kitOf(report).offered.map(
        ({ figure }) => [`charts/${figure.id}.csv`, chartData(report, figure).csv] as const,
      ),
    ]);
    const tables = described.resources.flatMap(({ path, schema }) =>
      schema === undefined ? [] : [{ path, schema }],
    );
    expect(tables.map(({ path }) => path)).toEqual([...texts.keys()]);
    for (const { path, schema } of tables) {
      const text = texts.get(path) ?? '';
      const [head = [], ...rows] = parse(text, { relax_column_count: false }) as string[][];
      expect(head).toEqual(schema.fields.map(({ name }) => name));
      expect(new Set(head).size, path).toBe(head.length);
      if (path === 'shots.csv') expect(rows).toHaveLength(report.session.shots.length);
      expect(rows.length, path).toBeGreaterThan(0);
      for (const row of rows) {
        schema.fields.forEach(({ name, type, constraints }, column) => {
          const cell = row[column] ?? '';
          if (schema.missingValues.includes(cell)) {
            expect(constraints?.required ?? false, name).toBe(false);
            return;
          }
          if (type === 'integer') expect(cell, name).toMatch(/^-?\d+$/);
          if (type === 'number') expect(cell, name).toMatch(/^-?\d+(\.\d+)?(e-?\d+)?$/);
          if (constraints?.enum !== undefined) expect(constraints.enum, name).toContain(cell);
        });
      }
    }
  });
});

test('nothing in shots.csv runs as a formula, and what was left out stands there with its reason', () => {
  const report = oddOnes.find(({ source }) => source.slug === 'two-golfers-corrected');
  const six = oddOnes.find(({ source }) => source.slug === 'eight-golfers-six-heads');
  if (report === undefined || six === undefined) throw new Error('no report');
  for (const csv of [report, six].map(shotsCsv)) {
    const cells = (parse(csv) as string[][]).flat();
    expect(cells.filter((cell) => /^[=+@\t\r]|^-(?![\d.])/.test(cell))).toEqual([]);
  }
  expect(shotsCsv(six)).toMatch(/,f,'\+Honeysuckle Mk2,/);
  const [head = [], ...rows] = parse(shotsCsv(report)) as string[][];
  const [out, why] = [head.indexOf('Left out'), head.indexOf('Reason')];
  const left = rows.filter((row) => row[out] === 'yes');
  expect(left.map((row) => row[why])).toEqual(["'=misread: +no ball seen", 'topped: hit the mat first']);
  expect(rows).toHaveLength(report.session.shots.length);
  for (const heading of head.filter((one) => /speed|carry|side|angle|direction|axis|spin rate/i.test(one)))
    expect(heading).toMatch(
      /\((km\/h|m|deg|rpm)(, (derived|modelled|estimated|modelled by our flight model))?\)$/,
    );
});

test('a homepage is given only where the shop has an address', () => {
  const [without] = loadSite(manyReports('name: Shop\n')).reports;
  const [within] = loadSite(manyReports()).reports;
  if (without === undefined || within === undefined) throw new Error('no report');
  expect(JSON.parse(dataPackage(without, dataTools))).not.toHaveProperty('homepage');
  expect(JSON.parse(dataPackage(within, dataTools))).toHaveProperty(
    'homepage',
    `https://golf.example/tests/reports/${within.source.slug}/`,
  );
});

test('the schema refuses what the standard forbids', () => {
  const [report] = reports;
  if (report === undefined) throw new Error('no report');
  const good = JSON.parse(dataPackage(report, dataTools)) as Record<string, unknown>;
  for (const bad of [
    { ...good, resources: [] },
    { ...good, name: 'Three Balls' },
    { ...good, created: '18 April 2026' },
  ])
    expect(validate(bad)).toBe(false);
});

describe('shots.csv', () => {
  const csv = (slug: string): readonly (readonly string[])[] => {
    const report = reports.find(({ source }) => source.slug === slug);
    if (report === undefined) throw new Error('no report');
    return parse(shotsCsv(report)) as string[][];
  };
  const [head = [], first = []] = csv('inch-off-the-driver');

  test('has the same columns before and behind the measures in every report', () => {
    for (const report of reports) {
      const [own = []] = csv(report.source.slug);
      expect(own.slice(0, 7)).toEqual([
        ...['Invented data', 'Golfer', 'Shot', 'Order', 'Round', 'Contender', 'Label'],
      ]);
      expect(own.slice(-2)).toEqual(['Left out', 'Reason']);
    }
    expect(first.slice(0, 7)).toEqual(['yes', 'one', '11', '1', '1', 'long', 'Long']);
  });

  test('says of shots that were hit no word of invention', () => {
    const [report] = loadSite(manyReports()).reports;
    if (report === undefined) throw new Error('no report');
    const hit = { ...report.source, front: { ...report.source.front, inventedData: false } };
    expect(shotsCsv({ ...report, source: hit })).toMatch(/^Golfer,Shot,/);
    expect(JSON.parse(dataPackage({ ...report, source: hit }, dataTools))).toHaveProperty('invented', false);
  });

  test('marks what was not measured in the heading, in digits that somebody could have typed', () => {
    const smash = head.indexOf('Smash factor (derived)');
    expect(first[smash]).toBe('1.4722');
    expect(head).toContain('Apex (m, modelled by our flight model)');
    for (const report of [...reports, ...oddOnes])
      for (const cell of (parse(shotsCsv(report)) as string[][]).slice(1).flat())
        if (/^-?\d+\.\d+$/.test(cell)) expect(cell).toMatch(/\.\d{1,4}$/);
  });

  test('numbers the rounds as they are counted, for shots without a column of rounds too', () => {
    const [, ...rows] = csv('three-shafts-eight-golfers');
    const rounds = Map.groupBy(rows, (row) => `${row[1] ?? ''} ${row[4] ?? ''}`);
    for (const own of rounds.values()) expect(new Set(own.map((row) => row[5])).size).toBe(own.length);
    const [, ...after] = csv('hybrids-at-a-demo-day');
    expect(new Set(after.map((row) => row[4]))).toEqual(new Set(['']));
  });
});

test.each([
  ['CC-BY-4.0', [{ name: 'CC-BY-4.0', path: 'https://spdx.org/licenses/CC-BY-4.0' }]],
  ['https://golf.example/terms', [{ path: 'https://golf.example/terms' }]],
])('the licence %s of the data is named', (licence, licenses) => {
  const address = 'address: https://golf.example/';
  const [described] = packagesOf(`name: Shop\n${address}\nreuse: {licence_data: "${licence}"}\n`);
  expect(described).toHaveProperty('licenses', licenses);
  // Charts without a licence of their own do not inherit it.
  const terms = [{ path: 'https://golf.example/about/#charts', title: 'Terms of the charts' }];
  for (const { path, licenses: own } of described?.resources ?? [])
    expect(own, path).toEqual(/\.(svg|png)$/.test(path) ? terms : licenses);
});

test('charts have the licence of charts, and what is known of no file is said of none', () => {
  const [both] = packagesOf('name: Shop\nreuse: {licence_data: CC0-1.0, licence_charts: CC-BY-4.0}\n');
  expect(both).toHaveProperty('licenses.0.name', 'CC0-1.0');
  const named = new Map(both?.resources.map(({ path, licenses: own }) => [path, own?.[0]?.name]));
  expect(named.get('charts/apart.png')).toBe('CC-BY-4.0');
  expect(named.get('charts/apart.csv')).toBe('CC0-1.0');
  const [data] = packagesOf('name: Shop\nreuse: {licence_data: CC0-1.0}\n');
  expect(data).not.toHaveProperty('licenses');
  expect(data?.resources.find(({ path }) => path === 'charts/apart.svg')).not.toHaveProperty('licenses');
  const [none] = packagesOf('name: Shop\n');
  expect(JSON.stringify(none)).not.toContain('licenses');
});

function packagesOf(shop: string): readonly Package[] {
  return loadSite(manyReports(shop), ['first']).reports.map((report) => {
    const described: unknown = JSON.parse(dataPackage(report, dataTools));
    if (!validate(described)) throw new Error(JSON.stringify(validate.errors));
    return described;
  });
}

test('a licence in other words is refused with what to write', () => {
  const { problems } = loadSite(manyReports('name: Shop\nreuse: {licence_data: free for all}\n'));
  expect(problems.map(({ kind, cure }) => [kind, cure])).toContainEqual([
    'value-invalid',
    'Write the short id of the licence without blanks, or the address of its text from https:// on; other words go under terms.',
  ]);
});
