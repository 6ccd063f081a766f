import { describe as suite, expect, test } from 'vitest';
import { brownForsythe, brownForsythePairs } from '../../src/stats/brownForsythe.ts';
import { classicAnova } from '../../src/stats/classicAnova.ts';
import { describe } from '../../src/stats/describe.ts';
import { studentizedRangeUpper } from '../../src/stats/distributions/studentizedRange.ts';
import { gamesHowell } from '../../src/stats/gamesHowell.ts';
import { pairsOf } from '../../src/stats/gapInterval.ts';
import { holm } from '../../src/stats/holm.ts';
import { moments } from '../../src/stats/moments.ts';
import { bonettSdInterval } from '../../src/stats/sdInterval.ts';
import { trimmedMoments } from '../../src/stats/trimmedMoments.ts';
import { welchAnova } from '../../src/stats/welchAnova.ts';
import { welchT } from '../../src/stats/welchT.ts';
import reference from '../reference/statistics.json' with { type: 'json' };
import { at, expectClose, expectInterval } from './close.ts';

/**
 * Against R 4.2.2 (tests/reference/statistics.R): R's own functions where it has them (t.test, oneway.test, aov,
 * p.adjust), else the formula of the paper named there. Statistics, df, standard errors
 * and intervals to 1e-10, p values to 1e-9.
 */
const FIGURE = 1e-10;
const P = 1e-9;

suite.each(reference.oneway.map((set) => [set.name, set] as const))('%s', (_name, set) => {
  const groups: readonly (readonly number[])[] = set.groups;
  const summaries = groups.map((group) => moments(group));

  test('described', () => {
    set.describe.forEach((expected, i) => {
      const group = at(groups, i);
      const own = describe(group);
      expect(own.n).toBe(expected.n);
      for (const field of ['mean', 'sd', 'median', 'min', 'max'] as const) {
        expectClose(own[field], expected[field], 1e-13, Math.abs(expected[field]), field);
      }
      expectInterval(own.ci, expected.ci, FIGURE, 'ci');
      expectInterval(describe(group, 0.9).ci, expected.ci90, FIGURE, '90 % ci');
    });
  });

  test('spread intervals and trimmed means', () => {
    set.describe.forEach((expected, i) => {
      const group = at(groups, i);
      expectInterval(bonettSdInterval(group, 0.95), expected.bonettSd, FIGURE, 'Bonett');
      const trimmed = trimmedMoments(group);
      expectClose(trimmed.mean, expected.trimmedMean, 1e-13);
      const winsorised = (trimmed.variance * (trimmed.n - 1)) / (group.length - 1);
      expectClose(winsorised, expected.winsorisedVariance, 1e-12);
    });
  });

  test('Welch, Yuen, Holm pair by pair', () => {
    const trimmed = groups.map((group) => trimmedMoments(group));
    const ps = pairsOf(groups.length).map(([a, b], i) => {
      const expected = at(set.welch, i);
      const gap = welchT(at(summaries, a), at(summaries, b), 0.95);
      const scale = expected.standardError;
      expectClose(gap.estimate, expected.estimate, FIGURE, scale, 'estimate');
      expectClose(gap.standardError, expected.standardError, FIGURE);
      expectClose(gap.df, expected.df, FIGURE);
      expectClose(gap.statistic, expected.statistic, FIGURE, Math.max(1, Math.abs(expected.statistic)));
      expectClose(gap.p, expected.p, P, expected.p, 'p');
      expectInterval(gap.ci, expected.ci, FIGURE, 'Welch ci');

      const robust = at(set.yuen, i);
      const yuen = welchT(at(trimmed, a), at(trimmed, b), 0.95);
      expectClose(yuen.estimate, robust.estimate, FIGURE, robust.standardError, 'Yuen estimate');
      expectClose(yuen.standardError, robust.standardError, FIGURE);
      expectClose(yuen.df, robust.df, FIGURE);
      expectClose(yuen.p, robust.p, P);
      expectInterval(yuen.ci, robust.ci, FIGURE, 'Yuen ci');
      return gap.p;
    });
    holm(ps).forEach((p, i) => expectClose(p, at(set.holm, i), P));
  });

  test('Games-Howell: Welch standard errors and df, ptukey where R is exact', () => {
    gamesHowell(summaries, 0.95).forEach((gap, i) => {
      const expected = at(set.welch, i);
      expect([gap.a, gap.b]).toEqual([expected.a, expected.b]);
      expectClose(gap.standardError, expected.standardError, FIGURE);
      expectClose(gap.df, expected.df, FIGURE);
      // R's ptukey is exact from 20 to 1,000 df only
      if (expected.gamesHowellP !== null) expectClose(gap.p, expected.gamesHowellP, 1e-8, 1, 'p');
      const half = (gap.ci[1] - gap.ci[0]) / 2;
      const q = (half / gap.standardError) * Math.SQRT2;
      expectClose(studentizedRangeUpper(q, groups.length, gap.df), 0.05, 1e-9);
    });
  });

  test('all groups at once', () => {
    const welch = welchAnova(summaries);
    expectClose(welch.statistic, set.welchAnova.statistic, FIGURE);
    expectClose(welch.df[1], at(set.welchAnova.df, 1), FIGURE);
    expectClose(welch.p, set.welchAnova.p, P);
    const classic = classicAnova(groups);
    expectClose(classic.statistic, set.anova.statistic, FIGURE);
    expectClose(classic.between, set.anova.between, FIGURE);
    expectClose(classic.within, set.anova.within, FIGURE);
    expectClose(classic.p, set.anova.p, P);
    const spread = brownForsythe(groups);
    expectClose(spread.statistic, set.brownForsythe.statistic, FIGURE);
    expectClose(spread.p, set.brownForsythe.p, P);
  });
});

test('two groups: Games-Howell is Welch', () => {
  const { groups } = at(reference.oneway, 9);
  const [a, b] = [moments(at(groups, 0)), moments(at(groups, 1))];
  const welch = welchT(a, b, 0.95);
  const [games] = gamesHowell([a, b], 0.95);
  expect(games).toEqual({ a: 0, b: 1, ...welch });
});

test('Brown-Forsythe pair by pair, adjusted by Holm', () => {
  const { groups } = at(reference.oneway, 8);
  const pairs = brownForsythePairs(groups);
  expect(pairs).toHaveLength(3);
  const alone = pairs.map((pair) => pair.alone);
  expect(pairs.map((pair) => pair.p)).toEqual(holm(alone));
  for (const { a, b, alone: p, ratio, distanceGap } of pairs) {
    const two = [at(groups, a), at(groups, b)];
    expectClose(p, brownForsythe(two).p, 1e-14);
    const [first, second] = two.map((group) => describe(group).sd);
    expectClose(ratio, (first ?? NaN) / (second ?? NaN), 1e-12);
    const distance = (group: readonly number[]): number => {
      const middle = describe(group).median;
      return describe(group.map((value) => Math.abs(value - middle))).mean;
    };
    const expected = distance(at(groups, a)) - distance(at(groups, b));
    expectClose(distanceGap, expected, 1e-12);
  }
});

test('golf balls hit by a robot, the printed analysis of variance', () => {
  // McClave & Sincich, Statistics: SST 2794.39, SSE 762.30, F 43.99 on 3 and 36 (figures from memory)
  const robot = at(reference.oneway, 11);
  const anova = classicAnova(robot.groups);
  expect(anova.between.toFixed(2)).toBe('2794.39');
  expect(anova.within.toFixed(2)).toBe('762.30');
  expect(anova.statistic.toFixed(2)).toBe('43.99');
  expect(anova.df).toEqual([3, 36]);
});

test('Bonett and chi-square agree in order: tails widen Bonett', () => {
  const even = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
  const tailed = [...even.slice(0, 11), 40];
  const width = ([low, high]: readonly [number, number]): number => high / low;
  expect(width(bonettSdInterval(tailed, 0.95))).toBeGreaterThan(width(bonettSdInterval(even, 0.95)));
});
