import { describe, expect, test } from 'vitest';
import { additiveModel, type Cell } from '../../src/stats/additiveModel.ts';
import { blockGaps, pairDifferences } from '../../src/stats/blockGaps.ts';
import { commonSlope } from '../../src/stats/commonSlope.ts';
import { contrast } from '../../src/stats/contrast.ts';
import { studentizedRangeUpper } from '../../src/stats/distributions/studentizedRange.ts';
import { linearTrend } from '../../src/stats/linearTrend.ts';
import { meanInterval } from '../../src/stats/meanInterval.ts';
import { moments } from '../../src/stats/moments.ts';
import reference from '../reference/statistics.json' with { type: 'json' };
import { at, expectClose, expectInterval } from './close.ts';

/** Against lm, anova, vcov and confint of R 4.2.2 (tests/reference/statistics.R). */
const FIGURE = 1e-10;

type Table = (typeof reference.twoway)[number];

function cellsOf(set: Table): readonly Cell[] {
  return set.value.map((value, i) => ({ block: at(set.block, i), treatment: at(set.treatment, i), value }));
}

describe.each(reference.twoway.map((set) => [set.name, set] as const))('%s', (_name, set) => {
  const cells = cellsOf(set);
  const model = additiveModel(cells, 0.95);

  test('sums of squares and F', () => {
    expectClose(model.treatmentSumOfSquares, set.treatmentSumOfSquares, FIGURE);
    expectClose(model.residualSumOfSquares, set.residualSumOfSquares, FIGURE);
    expectClose(model.blockSumOfSquares, set.blockSumOfSquares, FIGURE);
    expect(model.test.df).toEqual(set.test.df);
    expectClose(model.test.statistic, set.test.statistic, FIGURE);
    expectClose(model.test.p, set.test.p, 1e-9);
  });

  test('gaps and their standard errors', () => {
    expect(model.gaps).toHaveLength(set.gaps.length);
    model.gaps.forEach((gap, i) => {
      const expected = at(set.gaps, i);
      expectClose(gap.estimate, expected.estimate, FIGURE, expected.standardError);
      expectClose(gap.standardError, expected.standardError, FIGURE);
      const q = ((gap.ci[1] - gap.estimate) / gap.standardError) * Math.SQRT2;
      const k = model.effects.length;
      expectClose(studentizedRangeUpper(q, k, model.residualDf), 0.05, 1e-9);
    });
  });
});

test('ten golfers, the printed analysis of variance; brand C clear of the others', () => {
  // McClave & Sincich, Statistics: SS brands 3298.66, golfers 12073.88, error 546.62, F 54.31 on 3 and 27 (from memory)
  const model = additiveModel(cellsOf(at(reference.twoway, 0)), 0.95);
  expect(model.treatmentSumOfSquares.toFixed(2)).toBe('3298.66');
  expect(model.blockSumOfSquares.toFixed(2)).toBe('12073.88');
  expect(model.residualSumOfSquares.toFixed(2)).toBe('546.62');
  expect(model.test.statistic.toFixed(2)).toBe('54.31');
  for (const { a, b, ci } of model.gaps.filter((gap) => gap.a === 2 || gap.b === 2)) {
    expect(a === 2 ? ci[0] : -ci[1], `${a} ${b}`).toBeGreaterThan(0);
  }
});

test('two treatments in complete blocks are the paired t of R', () => {
  // t.test(extra ~ group, sleep, paired = TRUE): t = -4.0621, df = 9, p = 0.002833, documented in ?sleep
  const sleep = cellsOf(at(reference.twoway, 4));
  const [gap] = additiveModel(sleep, 0.95).gaps;
  const paired = meanInterval(pairDifferences(sleep, 0, 1), 0.95);
  expect(gap?.statistic.toFixed(4)).toBe('-4.0621');
  expect(gap?.p.toFixed(6)).toBe('0.002833');
  expectInterval(gap?.ci ?? [NaN, NaN], paired.ci, FIGURE);
});

describe('never narrower than the pair itself', () => {
  const cells = cellsOf(at(reference.twoway, 1));
  const joint = additiveModel(cells, 0.95).gaps;

  test('half-width is the greater of the two', () => {
    const gaps = blockGaps(cells, 0.95);
    expect(new Set(gaps.map((gap) => gap.ruledBy)).size).toBe(2);
    gaps.forEach((gap, i) => {
      const together = at(joint, i);
      const differences = pairDifferences(cells, gap.a, gap.b);
      const own = meanInterval(differences, 0.95);
      const half = (interval: readonly [number, number]): number => (interval[1] - interval[0]) / 2;
      expect(gap.direct).toBe(differences.length);
      expectClose(gap.estimate, together.estimate, FIGURE);
      expectClose(half(gap.ci), Math.max(half(together.ci), half(own.ci)), FIGURE);
      expect(gap.p < 0.05).toBe(gap.ci[0] > 0 || gap.ci[1] < 0);
    });
  });
});

test('a table in two pieces is refused', () => {
  const cells = [
    { block: 0, treatment: 0, value: 1 },
    { block: 0, treatment: 1, value: 2 },
    { block: 1, treatment: 0, value: 3 },
    { block: 1, treatment: 1, value: 5 },
    { block: 2, treatment: 2, value: 4 },
    { block: 3, treatment: 2, value: 4.5 },
  ];
  expect(() => additiveModel(cells, 0.95)).toThrow('only 2 of 3 treatments are tied together');
});

describe.each(reference.covariate.map((set) => [set.name, set] as const))(
  'common slope: %s',
  (_name, set) => {
    const fit = commonSlope(
      set.value.map((value, i) => ({ group: at(set.group, i), covariate: at(set.x, i), value })),
      0.95,
    );

    test('slope', () => {
      expectClose(fit.slope.estimate, set.slope.estimate, FIGURE);
      expectClose(fit.slope.standardError, set.slope.standardError, FIGURE);
      expect(fit.residualDf).toBe(set.slope.df);
      expectClose(fit.slope.p, set.slope.p, 1e-9);
      expectInterval(fit.slope.ci, set.slope.ci, FIGURE);
    });

    test('gaps at equal covariate', () => {
      fit.gaps.forEach((gap, i) => {
        const expected = at(set.gaps, i);
        expectClose(gap.estimate, expected.estimate, FIGURE, expected.standardError);
        expectClose(gap.standardError, expected.standardError, FIGURE);
      });
    });
  },
);

test('a drift is the common slope over places; a missing reading keeps its place', () => {
  const set = at(reference.covariate, 2);
  const trend = linearTrend(set.group, set.value, 0.95);
  expectClose(trend.slope.estimate, set.slope.estimate, FIGURE);
  const holed = set.value.map((value, i) => (i === 10 ? null : value));
  const direct = commonSlope(
    set.value.flatMap((value, i) => (i === 10 ? [] : [{ group: at(set.group, i), covariate: i + 1, value }])),
    0.95,
  );
  expect(linearTrend(set.group, holed, 0.95)).toEqual(direct);
});

test('a contrast of several groups', () => {
  const set = at(reference.contrasts, 0);
  const terms = set.groups.map((group, i) => ({ weight: at(set.weights, i), group: moments(group) }));
  const gap = contrast(terms, 0.95);
  expectClose(gap.estimate, set.estimate, FIGURE);
  expectClose(gap.standardError, set.standardError, FIGURE);
  expectClose(gap.df, set.df, FIGURE);
  expectClose(gap.p, set.p, 1e-9);
  expectInterval(gap.ci, set.ci, FIGURE);
  // in a family of three the same gap must reach farther: q(0.95; 3, df) / sqrt(2)
  const wide = contrast(terms, 0.95, 3);
  const q = ((wide.ci[1] - wide.estimate) / wide.standardError) * Math.SQRT2;
  expectClose(studentizedRangeUpper(q, 3, wide.df), 0.05, 1e-9);
});
