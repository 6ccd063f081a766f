import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { shotTable } from '../../src/charts/shots.ts';
import { dataFiles } from '../../src/kit/dataFiles.ts';
import { dataTools } from '../../src/site/dataTools.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { primaryMetrics } from '../../src/prose/answers.ts';
import { sayNumbers } from '../../src/prose/english/pairInWords.ts';
import { pairAnswer } from '../../src/prose/pairAnswer.ts';
import { printingOf } from '../../src/prose/printSteps.ts';
import { resolveReference, valueText } from '../../src/prose/references.ts';
import type { Telling } from '../../src/prose/telling.ts';

/** Metres in a yard (NIST SP 811, appendix B.8): converted here by hand, not by the code under test. */
const yard = 0.9144;

interface PairJson {
  readonly a: string;
  readonly b: string;
  readonly estimate: number;
  readonly ci: readonly [number, number];
  readonly p: number;
}
interface MetricJson {
  readonly id: string;
  readonly pairs: readonly PairJson[];
  readonly byContender: readonly {
    readonly id: string;
    readonly n: number;
    readonly mean: number;
    readonly sd: number;
  }[];
}

const reports = ['robot-balls', 'ten-golfers'].map((name) => {
  const [report] = loadSite(resolve('tests/cases', name, 'content')).reports;
  if (report === undefined) throw new Error(`tests/cases/${name} has no report`);
  return [name, report] as const;
});

/** A printed number is the true one rounded to a step. */
function expectPrinted(printed: string, truth: number, step: number): void {
  expect(
    Math.abs(Number(printed.replaceAll(',', '').replace('−', '-')) - truth),
    `${printed} for ${truth}`,
  ).toBeLessThanOrEqual(step / 2 + 1e-9);
}

/**
 * A printed limit is the true one rounded outwards to a step, so that nothing likely is left out; in words where that
 * would put it on the other side of what matters, and "almost 0" within a step of 0.
 */
function expectLimit(printed: string, truth: number, limit: 'lower' | 'upper', step: number): void {
  const value = Number(
    printed
      .replace(/^almost (?:nothing|0)$/, '0')
      .replace(/^just (?:over|under|above|below) /, '')
      .replace('−', '-'),
  );
  const beyond = limit === 'lower' ? truth - value : value - truth;
  expect(Math.abs(beyond), `${printed} for ${truth}`).toBeLessThan(step);
  const inWords = value === 0 || printed.includes('just');
  if (!inWords) expect(beyond, `${printed} for ${truth}`).toBeGreaterThanOrEqual(-1e-9);
}

describe.each(reports)('%s: sentences, tables and findings.json hold the same numbers', (_name, report) => {
  // what a reader downloads, parsed anew
  const json: { readonly metrics: readonly MetricJson[] } = JSON.parse(
    dataFiles(report, dataTools).findings.text,
  );
  const [carry] = primaryMetrics(report.findings);
  const [carryJson] = json.metrics;
  if (carry === undefined || carryJson === undefined) throw new Error('no primary metric');
  const telling: Telling = report.telling;
  const { step, averageStep } = printingOf(carry, telling);
  const figure = report.figures.find(({ id }) => id === 'apart');
  if (figure?.kind !== 'drawn') throw new Error('not drawn');

  test.each(carryJson.pairs)('$a and $b', ({ a, b, estimate, ci }) => {
    const index = carryJson.pairs.findIndex((pair) => pair.a === a && pair.b === b);
    const pair = carry.pairs[index];
    const row = figure.table.rows[index] ?? [];
    if (pair === undefined) throw new Error('no pair');
    const flip = estimate >= 0 ? 1 : -1;
    const [low = NaN, high = NaN] = ci.map((limit) => (limit * flip) / yard).toSorted((x, y) => x - y);
    const [, gap = '', from = '', to = ''] = row;
    expectPrinted(gap, Math.abs(estimate) / yard, step.step);
    expectLimit(from, low, 'lower', step.step);
    expectLimit(to, high, 'upper', step.step);
    // the reference in the fitter's narrative: gap and both limits where 0 is left out, else the limits only
    const reference = resolveReference(['apart', 'carry', a, b], telling, []);
    const own = sayNumbers(pairAnswer(pair, carry, report.findings.design), telling);
    expect(valueText(reference)).toBe(own);
  });

  test.each(carryJson.byContender)('average, spread and count of $id', ({ id, n, mean, sd }) => {
    const table = shotTable(carry, telling);
    const row = table.rows.find(([name]) => name === telling.nameOf(id)) ?? [];
    const cell = (heading: RegExp): string => row[table.head.findIndex((head) => heading.test(head))] ?? '';
    expect(cell(/shots/i)).toBe(String(n));
    expectPrinted(cell(/average|mean/i), mean / yard, averageStep.step);
    expectPrinted(cell(/standard deviation|spread/i), sd / yard, step.step);
    const reference = resolveReference(['mean', 'carry', id], telling, []);
    expect(reference.kind).toBe('number');
    expectPrinted(valueText(reference).split(' ')[0] ?? '', mean / yard, averageStep.step);
  });
});
