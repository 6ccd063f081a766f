import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import { findingsSchema, type Findings } from '../../src/findings/findings.ts';
import { dataFiles } from '../../src/kit/dataFiles.ts';
import { findingsJson, findingsJsonSchema, publishedFindings } from '../../src/kit/publishedFindings.ts';
import type { Report } from '../../src/kit/report.ts';
import { dataTools } from '../../src/site/dataTools.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { oddOnes, reports } from './content.ts';
import { manyReports } from './manyReports.ts';

const many = loadSite(manyReports()).reports;
const all = [...reports, ...oddOnes, ...many];
const schema = JSON.parse(findingsJsonSchema()) as Readonly<Record<string, unknown>>;
const validate = new Ajv2020({ strict: true, allErrors: true, validateFormats: false }).compile(schema);

function read(report: Report): Record<string, unknown> {
  return JSON.parse(dataFiles(report, dataTools).findings.text) as Record<string, unknown>;
}

test.each(all.map((report) => [report.source.slug, report] as const))(
  '%s: findings.json is of the published shape, by zod and by the JSON Schema',
  (_slug, report) => {
    const { error, data } = publishedFindings.safeParse(read(report));
    expect(error?.issues ?? []).toEqual([]);
    expect(data).toEqual(read(report));
    validate(read(report));
    expect(validate.errors ?? []).toEqual([]);
  },
);

describe('what is published with the findings', () => {
  const corrected = many.find(({ source }) => source.slug === 'third');

  test('says whose they are, on what terms, that they are invented, and what was corrected', () => {
    if (corrected === undefined) throw new Error('no report');
    expect(read(corrected)).toMatchObject({
      $schema: 'https://golf.example/tests/findings.schema.json',
      tool: { name: 'Straightface', version: dataTools.version },
      invented: true,
      status: 'published',
      address: 'https://golf.example/tests/reports/third/',
      publisher: 'Shop & Sons',
      licence: null,
      published: null,
      corrections: [{ date: '2026-04-01', was: '7 yd', now: '6 yd' }],
      interests: { paidBy: { kind: 'shop', words: 'the shop' }, supplied: null },
      supply: [
        {
          id: 'birch',
          suppliedBy: { kind: 'own-stock', words: 'our stock' },
          soldHere: 'new',
          price: null,
          build: { loft: '9°' },
        },
        { id: 'alder', build: { head: 'Alder head' } },
      ],
      golfers: [{ id: 'g3', role: 'staff fitter', hand: 'right', handicapBand: null, sawClub: null }],
      conditions: { place: null, ball: { model: null }, monitor: { kind: null } },
    });
  });

  test('names the licence of the data, and finds the schema from where it lies without an address', () => {
    const [report] = loadSite(manyReports('name: Shop\nreuse: {licence_data: CC-BY-4.0}\n')).reports;
    if (report === undefined) throw new Error('no report');
    expect(read(report)).toMatchObject({
      $schema: '../../findings.schema.json',
      address: null,
      licence: 'CC-BY-4.0',
    });
  });

  test('holds what flights were modelled with, where a column is by our flight model', () => {
    const three = reports.find(({ source }) => source.slug === 'three-balls-one-iron');
    if (three === undefined || corrected === undefined) throw new Error('no report');
    // 19 °C, 60 m above the sea, humidity not stated, so half: 100,610 Pa / (287.05 x 292.15 K), 0.41 % less for 1,098 Pa
    // of vapour.
    expect(read(three)['modelledWith']).toMatchObject({
      coefficients: 'naruo-2004',
      airDensity: expect.closeTo(1.1948, 3),
      airViscosity: expect.closeTo(1.81e-5, 7),
    });
    expect(read(three)).toHaveProperty('modelledWith.dragScale', expect.closeTo(0.95, 0));
    expect(read(corrected)['modelledWith']).toBeNull();
  });

  test('holds for every pair the sentence that it is handed', () => {
    if (corrected === undefined) throw new Error('no report');
    const text = findingsJson(corrected, '1', (pair, metric) => `${metric.id}: ${pair.a}, ${pair.b}`);
    const { metrics } = publishedFindings.parse(JSON.parse(text));
    expect(metrics.map(({ pairs }) => pairs.map(({ sentence }) => sentence))).toEqual([
      ['carry: birch, alder'],
    ]);
  });
});

describe('the schema', () => {
  const [report] = all;
  if (report === undefined) throw new Error('no report');
  const good = read(report);

  test('refuses an unknown key, a missing one, another version', () => {
    const accepts = (one: unknown): readonly boolean[] => [
      publishedFindings.safeParse(one).success,
      validate(one),
    ];
    expect(accepts(good)).toEqual([true, true]);
    for (const bad of [
      { ...good, more: 1 },
      { ...good, metrics: undefined },
      { ...good, version: 99 },
    ])
      expect(accepts(JSON.parse(JSON.stringify(bad)))).toEqual([false, false]);
  });

  test('has the top-level keys of the findings and what is published with them', () => {
    expectTypeOf<keyof z.infer<typeof findingsSchema>>().toEqualTypeOf<keyof Findings>();
    expect(Object.keys(publishedFindings.shape).toSorted()).toEqual(Object.keys(good).toSorted());
  });
});
