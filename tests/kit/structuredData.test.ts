import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { answerInList } from '../../src/prose/english/toldAnswer.ts';
import { scriptJson, structuredData, type Node } from '../../src/kit/structuredData.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { reports } from './content.ts';
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
    name: { type: 'string' },
    url: absolute,
  },
} as const;

/**
 * The properties of schema.org's Article, Dataset, Organization, PropertyValue, DataDownload and CorrectionComment that
 * we use, with the types those pages give (from memory), and the bounds that a large search engine states for a
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
          required: ['@type', 'headline', 'abstract', 'datePublished', 'author', 'publisher', 'isBasedOn'],
          properties: {
            '@type': { const: 'Article' },
            '@id': absolute,
            url: absolute,
            mainEntityOfPage: absolute,
            headline: { type: 'string', minLength: 1 },
            abstract: { type: 'string' },
            image: absolute,
            datePublished: day,
            dateModified: day,
            author: organization,
            publisher: organization,
            version,
            keywords,
            license: absolute,
            creditText: { type: 'string', minLength: 1 },
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
            usageInfo: { type: 'string' },
            measurementTechnique: { type: 'string' },
            variableMeasured: {
              type: 'array',
              minItems: 1,
              items: {
                type: 'object',
                additionalProperties: false,
                required: ['@type', 'name', 'unitText', 'measurementMethod'],
                properties: {
                  '@type': { const: 'PropertyValue' },
                  name: { type: 'string' },
                  unitText: { type: 'string' },
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
                required: ['@type', 'contentUrl', 'encodingFormat', 'description'],
                properties: {
                  '@type': { const: 'DataDownload' },
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
  const [report] = loadSite(manyReports('name: Shop\n')).reports;
  if (report === undefined) throw new Error('no report');
  const data = structuredData(report);
  validate(data);
  expect(validate.errors ?? []).toEqual([]);
  expect(JSON.stringify(data).replace('https://schema.org', '')).not.toMatch(/https?:/);
});

test('a shop is one publisher in all its reports, and who paid stands with the report', () => {
  const publishers = new Set(reports.map((report) => JSON.stringify(articleOf(report)['publisher'])));
  expect(publishers.size).toBe(1);
  const fundings = new Map(reports.map((report) => [report.source.slug, articleOf(report)['funding']]));
  expect(fundings.get('fairway-woods-two-golfers')).toEqual({
    '@type': 'Grant',
    description: expect.stringMatching(/half/),
  });
  expect(fundings.get('three-balls-one-iron')).toBeUndefined();
});

test('licences and the credit line are named', () => {
  const reuse =
    'reuse: {credit: Shop, licence_data: CC-BY-4.0, licence_charts: "https://golf.example/terms"}';
  const [report] = loadSite(manyReports(`name: Shop\naddress: https://golf.example/\n${reuse}\n`)).reports;
  if (report === undefined) throw new Error('no report');
  const data = structuredData(report);
  validate(data);
  expect(validate.errors ?? []).toEqual([]);
  expect(data['@graph']).toMatchObject([
    { license: 'https://golf.example/terms', creditText: 'Shop' },
    { license: 'https://spdx.org/licenses/CC-BY-4.0', creditText: 'Shop', version: '1.0.0' },
  ]);
});

function articleOf(report: (typeof reports)[number]): Node {
  const [article] = structuredData(report)['@graph'] as readonly Node[];
  if (article === undefined) throw new Error('no article');
  return article;
}
