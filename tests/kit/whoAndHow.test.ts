import { describe, expect, test } from 'vitest';
import { isReadingStated } from '../../src/findings/fairness.ts';
import { primaryMetrics } from '../../src/prose/answers.ts';
import { countsIn, howHit, reportInBrief } from '../../src/kit/whoAndHow.ts';
import { readingWords } from '../../src/prose/english/kit/whoAndHow.ts';
import { disclosure } from '../../src/prose/disclosure.ts';
import { around, reportOf } from '../findings/reportOf.ts';

const columnsRead = (report: ReturnType<typeof reportOf>): string =>
  disclosure({ ...report, version: '0' })
    .flatMap(({ items }) => items)
    .find(({ label }) => label === 'Measured or calculated')?.value ?? '';

/** How the main readings of a report came about. */
const readingsOf = ({ findings, source }: ReturnType<typeof reportOf>): string =>
  readingWords(primaryMetrics(findings), (id) => isReadingStated(source.front, id));

describe('how the readings came about', () => {
  test('what nobody says was measured is not said to have been', () => {
    const silent = reportOf({ front: { conditions: '{monitor: radar}' } });
    expect(readingsOf(silent)).toBe('How carry was measured is not recorded.');
    expect(columnsRead(silent)).toBe('not stated; treated as measured: carry');
  });

  test('what the shop says stands', () => {
    const measured = reportOf({ front: { conditions: '{monitor: {columns: {carry: measured}}}' } });
    expect(readingsOf(measured)).toBe('Carry was measured.');
    expect(columnsRead(measured)).toBe('measured: carry');
    const modelled = reportOf({ front: { conditions: '{monitor: {columns: {carry: modelled}}}' } });
    expect(readingsOf(modelled)).toBe('Carry was calculated from the launch, not watched.');
  });

  test('one said and one not', () => {
    const report = reportOf({
      shots: {
        'Carry (yd)': { alder: around(237), birch: around(231).toReversed(), cedar: around(225) },
        'Ball Speed (mph)': { alder: around(150), birch: around(150), cedar: around(150) },
      },
      front: { primary: '[carry, ball_speed]', conditions: '{monitor: {columns: {carry: measured}}}' },
    });
    expect(readingsOf(report)).toBe('Carry was measured. How ball speed was measured is not recorded.');
    expect(columnsRead(report)).toBe('not stated; treated as measured: ball speed; measured: carry');
  });
});

describe('how a report was hit, in a line', () => {
  const report = reportOf({});

  test('with its golfers and its day, and without', () => {
    expect(reportInBrief(report)).toBe(
      'One golfer, 12 shots with each head, in rounds, one of each, in the same order every time; hit 11 April 2026.',
    );
    expect(howHit(report)).toBe(
      '12 shots with each head, in rounds, one of each, in the same order every time.',
    );
  });

  test('counts what a measure counts, and without one all shots that were not left out', () => {
    const [metric = null] = primaryMetrics(report.findings);
    expect(countsIn(report, metric)).toEqual([12, 12, 12]);
    expect(countsIn(report, null)).toEqual([12, 12, 12]);
  });
});
