import { describe, expect, test } from 'vitest';
import { parse } from 'csv-parse/sync';
import { charts } from '../../src/charts/charts.ts';
import { chartData } from '../../src/kit/chartData.ts';
import { fromCanonical } from '../../src/trade/units.ts';
import { offered, oddOnes } from './content.ts';

interface Published {
  readonly id: string;
  readonly finding: string;
  readonly invented: boolean;
  readonly unit: string | null;
  readonly report: Readonly<Record<string, string | null>>;
  readonly columns: readonly { readonly name: string; readonly unit: string | null }[];
  readonly rows: readonly Readonly<Record<string, string | number | null>>[];
}

const readJson = (json: string): Published => JSON.parse(json) as Published;

const ofChart = (slug: string, id: string) => {
  const found = offered.find(([name]) => name === `${slug}/${id}`);
  if (found === undefined) throw new Error(`${slug} has no ${id}`);
  const [, report, figure] = found;
  return { report, ...chartData(report, figure) };
};

describe.each(offered)('%s', (_name, report, figure) => {
  const { csv, json, fields } = chartData(report, figure);
  const [head = [], ...rows] = parse(csv, { record_delimiter: '\r\n' }) as string[][];
  const published = readJson(json);

  test('has rows of as many cells as its heading, the same in both files', () => {
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(head).size).toBe(head.length);
    for (const row of rows) expect(row.length).toBe(head.length);
    expect(head).toEqual(fields.map(({ name }) => name));
    const names = published.columns.map(({ name }) => name);
    expect(published.rows.map((row) => names.map((name) => String(row[name] ?? '')))).toEqual(
      // What a spreadsheet would run as a formula is guarded in the one only.
      rows.map((row) => row.map((cell) => cell.replace(/^'(?=[=+\-@])/, ''))),
    );
  });

  test('holds numbers where a column says so, with its unit in the heading', () => {
    for (const [at, { name, type, unit }] of fields.entries()) {
      if (unit !== undefined && unit !== '1') expect(name).toMatch(/\((yd|m|mph|km\/h|rpm|deg)\)$/);
      if (type === 'string') continue;
      for (const row of rows) expect(row[at]).toMatch(/^(-?\d+(\.\d+)?(e-\d+)?)?$/);
    }
    // Shots are numbered anyway; what else is counted is what the chart shows.
    const ofShots = figure.chart !== 'meetings' && charts[figure.chart].numbers === 'shots';
    const wanted = ofShots ? ['number'] : ['number', 'integer'];
    const ofNumbers = fields.flatMap(({ type }, at) => (wanted.includes(type) ? [at] : []));
    expect(
      rows.some((row) => ofNumbers.some((at) => row[at] !== '')),
      'a column of numbers',
    ).toBe(true);
  });

  test('says in every row and at its head whether the shots are invented, and where the report stands', () => {
    const { inventedData } = report.source.front;
    expect(published.invented).toBe(inventedData);
    expect(head.includes('Invented data')).toBe(inventedData);
    if (inventedData) for (const row of rows) expect(row[0]).toBe('yes');
    expect(published.finding).toMatch(/[.!?]$/);
    expect(published.report['version']).toMatch(/^1\.0\.\d+$/);
    const { shop, slug } = report.source;
    const address = published.report['address'];
    if (shop?.address == null) expect(address).toBeNull();
    else expect(decodeURI(address ?? '')).toMatch(new RegExp(`/reports/${slug}/$`));
  });
});

test('the differences are those of the findings, counted towards the one ahead, in the units of the shop', () => {
  const { report, json } = ofChart('three-balls-one-iron', 'apart');
  const [metric] = report.findings.metrics;
  const pair = metric?.pairs.find(({ a, b }) => a === 'heron' && b === 'wren');
  const row = readJson(json).rows.find(({ Second }) => Second === 'Wren');
  expect(row?.['First']).toBe('Heron');
  expect(row?.['Best estimate']).toBeCloseTo(fromCanonical(pair?.estimate ?? NaN, 'yd'), 3);
  expect(row?.['From']).toBeCloseTo(fromCanonical(pair?.ci?.[0] ?? NaN, 'yd'), 3);
  expect(row?.['To']).toBeCloseTo(fromCanonical(pair?.ci?.[1] ?? NaN, 'yd'), 3);
  expect(row?.['Answer']).toBe('Clear difference');
});

test('a pair whose second is ahead is turned, limits too', () => {
  const { report, json } = ofChart('three-shafts-eight-golfers', 'apart');
  const pair = report.findings.metrics[0]?.pairs.find(({ a, b }) => a === 'rowan' && b === 'sorrel');
  expect(pair?.estimate).toBeLessThan(0);
  const row = readJson(json).rows.find(({ First, Second }) => First === 'Sorrel' && Second === 'Rowan');
  expect(row?.['Best estimate']).toBeCloseTo(fromCanonical(-(pair?.estimate ?? NaN), 'yd'), 3);
  expect(row?.['From']).toBeCloseTo(fromCanonical(-(pair?.ci?.[1] ?? NaN), 'yd'), 3);
});

test('a chart of shots has every shot that it draws, those left out marked', () => {
  const { report, csv } = ofChart('two-clubs-for-200', 'shots');
  const rows = parse(csv, { columns: true, record_delimiter: '\r\n' }) as Record<string, string>[];
  expect(rows.length).toBe(report.session.shots.length);
  expect(rows.filter((row) => row['Left out'] === 'yes').length).toBe(1);
  expect(rows[0]).toMatchObject({ Label: 'Hybrid', Order: '1', 'Carry (yd)': '184.9' });
});

test('a shop that works in metres gets metres', () => {
  const metric = oddOnes.find(({ telling }) => telling.system === 'metres');
  const figure = metric?.figures.find((one) => one.kind === 'drawn' && one.chart === 'shots');
  if (metric === undefined || figure?.kind !== 'drawn') throw new Error('no report in metres');
  expect(chartData(metric, figure).csv).toContain('Carry (m)');
});
