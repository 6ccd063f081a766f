import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { answerInList } from '../../src/prose/english/toldAnswer.ts';
import { scriptJson, type Node } from '../../src/kit/linkedData.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { structuredData } from '../../src/kit/structuredData.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { oddOnes, reports } from './content.ts';
import { manyReports } from './manyReports.ts';

const day = { type: 'string', pattern: '^\\d{4}-\\d\\d-\\d\\d$' } as const;
const absolute = { type: 'string', pattern: '^https?://[^/]+/' } as const;
const version = { type: 'string', pattern: '^1\\.0\\.\\d+$' } as const;
const keywords = { type: 'array', minItems: 3, uniqueItems: true, items: { type: 'string' } } as const;
const organization = {
  type: 'object',
  additionalProperties: false,
  required: ['@type', 'name'],
  properties: {
    '@type': { const: 'Organization' },
    '@id': absolute,
    name: { type: 'string' },
    url: absolute,
    correctionsPolicy: absolute,
  },
} as const;
const language = { type: 'string', pattern: '^en(-[A-Z]{2})?$' } as const;
const image = {
  type: 'object',
  additionalProperties: false,
  required: [...['@type', 'contentUrl', 'encodingFormat', 'description', 'creditText', 'acquireLicensePage']],
  properties: {
    '@type': { const: 'ImageObject' },
    contentUrl: { type: 'string', pattern: '^https?://[^/]+/.*\\.png$' },
    encodingFormat: { const: 'image/png' },
    width: { type: 'string', pattern: '^\\d+ px$' },
    height: { type: 'string', pattern: '^\\d+ px$' },
    description: { type: 'string', minLength: 40 },
    creditText: { type: 'string', minLength: 1 },
    copyrightNotice: { type: 'string', pattern: '^© \\d{4} .' },
    license: absolute,
    usageInfo: {
      type: 'object',
      additionalProperties: false,
      required: ['@type', 'text'],
      properties: { '@type': { const: 'CreativeWork' }, text: { type: 'string' } },
    },
    acquireLicensePage: absolute,
  },
} as const;

/**
 * The properties of schema.org's Article, ImageObject, Dataset, Organization, PropertyValue, DataDownload and
 * CorrectionComment that we use, with the types those pages give (from memory), and the bounds that a large search engine states for a
 * description of a data set, 50 to 5,000 characters (from memory). Nothing besides, so no rating.
 */
const schema = {
  type: 'object',
  additionalProperties: false,
  required: ['@context', '@graph'],
  properties: {
    '@context': { const: 'https://schema.org' },
    '@graph': {
      type: 'array',
      minItems: 2,
      maxItems: 2,
      items: [
        {
          type: 'object',
          additionalProperties: false,
          required: [
            ...['@type', 'headline', 'abstract', 'datePublished', 'author', 'publisher', 'isBasedOn'],
            ...['inLanguage', 'isAccessibleForFree', 'creativeWorkStatus'],
          ],
          properties: {
            '@type': { const: 'Article' },
            '@id': absolute,
            url: absolute,
            mainEntityOfPage: absolute,
            headline: { type: 'string', minLength: 1 },
            abstract: { type: 'string' },
            inLanguage: language,
            isAccessibleForFree: { const: true },
            creativeWorkStatus: { enum: ['Published', 'Obsolete'] },
            image: { type: 'array', minItems: 2, items: image },
            datePublished: day,
            dateModified: day,
            author: organization,
            publisher: organization,
            version,
            keywords,
            creditText: { type: 'string', minLength: 1 },
            funder: organization,
            funding: {
              type: 'object',
              additionalProperties: false,
              required: ['@type', 'description'],
              properties: { '@type': { const: 'Grant' }, description: { type: 'string', minLength: 10 } },
            },
            isBasedOn: {},
            correction: {
              type: 'array',
              minItems: 1,
              items: {
                type: 'object',
                additionalProperties: false,
                required: ['@type', 'datePublished', 'text'],
                properties: {
                  '@type': { const: 'CorrectionComment' },
                  datePublished: day,
                  text: { type: 'string' },
                },
              },
            },
          },
        },
        {
          type: 'object',
          additionalProperties: false,
          required: [
            '@type',
            'name',
            'description',
            'creator',
            'datePublished',
            'variableMeasured',
            'measurementTechnique',
            'inLanguage',
          ],
          properties: {
            '@type': { const: 'Dataset' },
            '@id': absolute,
            url: absolute,
            name: { type: 'string' },
            description: { type: 'string', minLength: 50, maxLength: 5000 },
            creator: organization,
            datePublished: day,
            temporalCoverage: day,
            version,
            identifier: { type: 'string', minLength: 5 },
            keywords,
            license: absolute,
            creditText: { type: 'string', minLength: 1 },
            isAccessibleForFree: { const: true },
            inLanguage: language,
            measurementTechnique: { type: 'string' },
            variableMeasured: {
              type: 'array',
              minItems: 1,
              items: {
                type: 'object',
                additionalProperties: false,
                required: ['@type', 'name', 'unitText', 'unitCode', 'measurementMethod'],
                properties: {
                  '@type': { const: 'PropertyValue' },
                  name: { type: 'string' },
                  unitText: { type: 'string' },
                  unitCode: { type: 'string', pattern: '^ucum:.' },
                  measurementMethod: { enum: ['measured', 'derived', 'modelled', 'estimated'] },
                },
              },
            },
            distribution: {
              type: 'array',
              minItems: 1,
              items: {
                type: 'object',
                additionalProperties: false,
                required: ['@type', 'name', 'contentUrl', 'encodingFormat', 'description'],
                properties: {
                  '@type': { const: 'DataDownload' },
                  name: { type: 'string' },
                  license: absolute,
                  contentUrl: absolute,
                  description: { type: 'string', minLength: 5 },
                  encodingFormat: { enum: ['text/csv', 'application/json'] },
                },
              },
            },
          },
        },
      ],
      additionalItems: false,
    },
  },
} as const;

const validate = new Ajv({ strictTuples: false, allErrors: true }).compile(schema);

describe.each(reports.map((report) => [report.source.slug, report] as const))('%s', (_slug, report) => {
  const data = structuredData(report);

  test('is an Article on a Dataset in the words of schema.org', () => {
    validate(data);
    expect(validate.errors ?? []).toEqual([]);
  });

  test('every picture and every file says by itself that the data are made up', () => {
    const [article, dataset] = data['@graph'] as readonly Node[];
    const alone = [
      ...(article?.['image'] as readonly Node[]),
      ...(dataset?.['distribution'] as readonly Node[]),
    ];
    const chart = `charts/${kitOf(report).offered[0]?.figure.id}`;
    const of = `/reports/${report.source.slug}/`;
    // In the shapes that the shop asks for.
    expect(alone.map(({ contentUrl }) => String(contentUrl).split(of).at(-1))).toEqual([
      'share.png',
      `${chart}.png`,
      ...['square', 'upright', 'video'].map((shape) => `${chart}-${shape}.png`),
      ...['shots.csv', 'findings.json', 'datapackage.json'],
    ]);
    for (const { description } of alone)
      expect(String(description).includes('Invented data.')).toBe(report.source.front.inventedData);
  });

  test('says what the page says, made-up data included', () => {
    const text = JSON.stringify(data);
    expect(text).toContain(JSON.stringify(answerInList(report.telling)).slice(1, -1));
    expect(text.includes('Invented data.')).toBe(report.source.front.inventedData);
    expect(text).not.toMatch(/rating|review|offer/i);
  });
});

test('corrections are in it, and markup in them ends no script element', () => {
  const corrected = loadSite(manyReports()).reports.find(({ source }) => source.slug === 'third');
  if (corrected === undefined) throw new Error('no report');
  const data = structuredData(corrected);
  validate(data);
  expect(validate.errors ?? []).toEqual([]);
  const script = scriptJson(data);
  expect(script).toContain('"dateModified":"2026-04-01"');
  expect(script).toContain('A typing error & its \\u003ccure>. It said: 7 yd. It now says: 6 yd.');
  expect(script).not.toContain('<');
  expect(JSON.parse(script)).toEqual(data);
});

test('without an address of the site no address is made up', () => {
  const [report] = loadSite(manyReports('name: Shop\n'), ['first']).reports;
  if (report === undefined) throw new Error('no report');
  const data = structuredData(report);
  validate(data);
  expect(validate.errors ?? []).toEqual([]);
  expect(JSON.stringify(data).replace('https://schema.org', '')).not.toMatch(/https?:/);
});

test('a shop is one publisher in all its reports, and who paid stands with the report', () => {
  const publishers = new Set(
    reports.flatMap((report) => {
      const { publisher, author, funder = publisher } = articleOf(report);
      return [publisher, author, funder].map((one) => JSON.stringify(one));
    }),
  );
  expect([...publishers]).toEqual([
    JSON.stringify({
      '@type': 'Organization',
      name: 'Example Golf Workshop',
      '@id': 'https://example.test/#publisher',
      url: 'https://example.test/',
      correctionsPolicy: 'https://example.test/about/#corrections',
    }),
  ]);
  const paid = new Map(reports.map((report) => [report.source.slug, articleOf(report)]));
  expect(paid.get('fairway-woods-two-golfers')).toMatchObject({
    funding: { '@type': 'Grant', description: expect.stringMatching(/half/) },
    funder: { name: 'Example Golf Workshop' },
  });
  expect(paid.get('three-balls-one-iron')).not.toHaveProperty('funding');
  expect(paid.get('three-balls-one-iron')).toHaveProperty('funder.name', 'Example Golf Workshop');
  // The customer paid, and no word of the publisher.
  expect(paid.get('three-irons-after-work')).not.toHaveProperty('funder');
});

/** One of many reports, of a shop that says so of itself. */
function withShop(lines: string, slug = 'first'): Node {
  const folder = manyReports(`name: Shop\naddress: https://golf.example/\n${lines}\n`);
  const [report] = loadSite(folder, [slug]).reports;
  if (report === undefined) throw new Error('no report');
  return structuredData(report);
}

test('licences stand with what they are of: the charts’ with pictures, the data’s with every file', () => {
  const data = withShop(
    'reuse: {credit: Shop of ours, terms: Whole and unchanged., licence_data: CC-BY-4.0, licence_charts: "https://golf.example/terms"}',
  );
  validate(data);
  expect(validate.errors ?? []).toEqual([]);
  const license = 'https://spdx.org/licenses/CC-BY-4.0';
  const picture = {
    license: 'https://golf.example/terms',
    creditText: 'Shop of ours',
    copyrightNotice: '© 2026 Shop',
    usageInfo: { text: 'Whole and unchanged.' },
    acquireLicensePage: 'https://golf.example/about/#charts',
  };
  expect(data['@graph']).toMatchObject([
    { creditText: 'Shop of ours', image: [picture, picture] },
    {
      license,
      creditText: 'Shop of ours',
      version: '1.0.0',
      distribution: [{ license }, { license }, { license }],
    },
  ]);
  expect((data['@graph'] as readonly Node[])[0]).not.toHaveProperty('license');
});

test('who gives up every right states none, and without a credit line the shop is credited by its name', () => {
  const [article] = withShop('reuse: {licence_charts: CC0-1.0}')['@graph'] as readonly Node[];
  const pictures = article?.['image'] as readonly Node[];
  expect(pictures).toHaveLength(2);
  for (const picture of pictures) {
    expect(picture).not.toHaveProperty('copyrightNotice');
    expect(picture['creditText']).toBe('Shop');
  }
});

test('the shapes of the first chart that a shop asks for are named with their size', () => {
  const [article] = withShop('exports: [square, upright, video, print, other-units]')[
    '@graph'
  ] as readonly Node[];
  const pictures = article?.['image'] as readonly Node[];
  expect(
    pictures.map(({ contentUrl, width = '', height = '' }) => [contentUrl, width, height].join(' ').trim()),
  ).toEqual([
    'https://golf.example/reports/first/share.png 1200 px 630 px',
    'https://golf.example/reports/first/charts/apart.png',
    'https://golf.example/reports/first/charts/apart-square.png 1080 px 1080 px',
    'https://golf.example/reports/first/charts/apart-upright.png 1080 px 1350 px',
    'https://golf.example/reports/first/charts/apart-video.png 1920 px 1080 px',
  ]);
});

test('of a withdrawn report only that it is, when and why; one that was replaced is out of date', () => {
  const replaced = oddOnes.find(({ source }) => source.front.status === 'superseded');
  if (replaced === undefined) throw new Error('no report');
  const { '@graph': nodes } = withShop('', 'gone');
  expect(nodes).toHaveLength(1);
  expect(nodes).toMatchObject([
    {
      '@type': 'Article',
      creativeWorkStatus: 'Withdrawn',
      dateModified: '2026-06-25',
      abstract: 'This report was withdrawn on 25 June 2026. The monitor was out of order.',
    },
  ]);
  expect(JSON.stringify(nodes)).not.toMatch(/Alder|Birch|yards|png|csv/);
  expect(articleOf(replaced)).toMatchObject({
    creativeWorkStatus: 'Obsolete',
    abstract: expect.stringContaining('Replaced by a newer report.'),
  });
});

function articleOf(report: (typeof reports)[number]): Node {
  const [article] = structuredData(report)['@graph'] as readonly Node[];
  if (article === undefined) throw new Error('no article');
  return article;
}
