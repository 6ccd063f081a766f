import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Findings } from '../src/findings/findings.ts';
import { loadSite } from '../src/site/siteContent.ts';
import { additiveModel } from '../src/stats/additiveModel.ts';
import { classicAnova } from '../src/stats/classicAnova.ts';
import { fromCanonical } from '../src/trade/units.ts';
import robot from './reference/cases/robot-balls.json' with { type: 'json' };
import golfers from './reference/cases/ten-golfers.json' with { type: 'json' };

/** The findings of the one report of a case folder, through reading, joining and analysis. */
function findingsOf(name: string): Findings {
  const site = loadSite(resolve('tests/cases', name, 'content'));
  expect(site.problems).toEqual([]);
  const [report] = site.reports;
  if (report === undefined) throw new Error(`tests/cases/${name} has no report`);
  return report.findings;
}

/** Six digits, as the bar asks; R's own quantile is good to about eight. */
function agrees(actual: number | null | undefined, expected: number): void {
  expect(Math.abs((actual ?? Number.NaN) - expected)).toBeLessThanOrEqual(1e-6 * Math.abs(expected));
}

/**
 * Robot-hit carry of four brands of ball, ten shots each: McClave and Sincich, *Statistics*, chapter on the analysis
 * of variance (figures from memory). Printed there: SST 2794.39, SSE 762.30, F 43.99 on 3 and 36. Welch and
 * Games-Howell by R 4.2.2 (`reference/cases/robot-balls.R`).
 */
describe('four balls hit by a robot', () => {
  const findings = findingsOf('robot-balls');
  const [carry] = findings.metrics;

  test('the shots read are those of the textbook: its sums of squares and F come out', () => {
    const site = loadSite(resolve('tests/cases/robot-balls/content'));
    const shots = site.reports[0]?.session.shots ?? [];
    const groups = ['a', 'b', 'c', 'd'].map((id) =>
      shots
        .filter(({ contender }) => contender === id)
        .map(({ values }) => fromCanonical(values.carry ?? 0, 'yd')),
    );
    const { statistic, df, between, within } = classicAnova(groups);
    expect(between).toBeCloseTo(2794.39, 2);
    expect(within).toBeCloseTo(762.3, 2);
    expect(statistic).toBeCloseTo(43.99, 2);
    expect(df).toEqual([3, 36]);
    agrees(statistic, robot.anovaYards.f);
  });

  test('means, spreads and intervals of the means agree with R', () => {
    carry?.byContender.forEach(({ mean, sd, ci, n }, index) => {
      expect(n).toBe(10);
      agrees(mean, robot.means[index] ?? 0);
      agrees(sd, robot.sds[index] ?? 0);
      agrees(ci?.[0], robot.lower[index] ?? 0);
      agrees(ci?.[1], robot.upper[index] ?? 0);
    });
    expect(carry?.byContender).toHaveLength(4);
  });

  test('Welch F, its df and p agree with R', () => {
    agrees(carry?.omnibus?.statistic, robot.welch.statistic);
    agrees(carry?.omnibus?.df[0], robot.welch.df[0] ?? 0);
    agrees(carry?.omnibus?.df[1], robot.welch.df[1] ?? 0);
    agrees(carry?.omnibus?.p, robot.welch.p);
  });

  test.each(robot.pairs)('Games-Howell of $a and $b agrees with R', ({ a, b, estimate, lower, upper, p }) => {
    const pair = carry?.pairs.find((candidate) => candidate.a === a && candidate.b === b);
    expect(pair?.method).toBe('games-howell');
    agrees(pair?.estimate, estimate);
    agrees(pair?.ci?.[0], lower);
    agrees(pair?.ci?.[1], upper);
    // R 4.2's ptukey is off by up to 1e-8 absolute at these df, which is more than six digits of a tiny p.
    expect(Math.abs((pair?.p ?? 1) - p)).toBeLessThan(1e-6 * p + 2e-8);
  });

  test('the stated order is taken at its word and said to be stated', () => {
    expect(findings.design.order).toBe('stated-random');
    expect(carry?.pairs.map(({ credit }) => credit)).toEqual(Array(6).fill('contender'));
  });
});

/**
 * Ten golfers each hitting four brands of ball: McClave and Sincich, *Statistics* (figures from memory). Printed
 * there: SS brands 3298.66, SS golfers 12073.88, SSE 546.62, F 54.31 on 3 and 27; brand C clear of the others.
 */
describe('four balls hit by ten golfers', () => {
  const findings = findingsOf('ten-golfers');
  const [carry] = findings.metrics;

  test('the golfer is the unit, and F is that of the textbook', () => {
    expect(findings.design.unit).toBe('hitter');
    expect(carry?.omnibus?.statistic).toBeCloseTo(54.31, 2);
    expect(carry?.omnibus?.df).toEqual([3, 27]);
    agrees(carry?.omnibus?.statistic, golfers.anovaYards.f);
  });

  test('the sums of squares are those of the textbook', () => {
    const shots = loadSite(resolve('tests/cases/ten-golfers/content')).reports[0]?.session.shots ?? [];
    const model = additiveModel(
      shots.map(({ contender, hitter, values }) => ({
        block: Number(hitter.slice(1)) - 1,
        treatment: 'abcd'.indexOf(contender),
        value: fromCanonical(values.carry ?? 0, 'yd'),
      })),
      0.95,
    );
    expect(model.treatmentSumOfSquares).toBeCloseTo(3298.66, 2);
    expect(model.blockSumOfSquares).toBeCloseTo(12073.88, 2);
    expect(model.residualSumOfSquares).toBeCloseTo(546.62, 2);
  });

  test.each(golfers.pairs)(
    'the gap of $a and $b agrees with R',
    ({ a, b, estimate, halfWidth, newHitter, more, byLuck }) => {
      const pair = carry?.pairs.find((candidate) => candidate.a === a && candidate.b === b);
      agrees(pair?.estimate, estimate);
      agrees(pair?.ci?.[0], estimate - halfWidth);
      agrees(pair?.ci?.[1], estimate + halfWidth);
      agrees(pair?.newHitter?.[0], newHitter[0] ?? 0);
      agrees(pair?.newHitter?.[1], newHitter[1] ?? 0);
      expect(pair?.whoGained?.more).toBe(more);
      agrees(pair?.whoGained?.byLuck, byLuck);
    },
  );

  test('brand C is clear of the others', () => {
    const withC = carry?.pairs.filter(({ a, b }) => a === 'c' || b === 'c') ?? [];
    expect(withC.map(({ verdict }) => verdict)).toEqual(['clear', 'clear', 'clear']);
    expect(carry?.leading).toEqual(['c']);
  });
});
