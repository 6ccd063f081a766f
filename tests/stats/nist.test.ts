import { describe, expect, test } from 'vitest';
import { classicAnova } from '../../src/stats/classicAnova.ts';
import { commonSlope } from '../../src/stats/commonSlope.ts';
import { moments } from '../../src/stats/moments.ts';
import nist from '../reference/nist-strd.json' with { type: 'json' };
import { at, correctDigits } from './close.ts';

/**
 * Certified values of the NIST Statistical Reference Datasets. What can be asked of doubles at all is the
 * `exact_on_binary_doubles` of tests/reference/README.md.
 */
function alternating(first: number, then: readonly number[], repeats: number): readonly number[] {
  return [first, ...Array.from({ length: repeats }, () => then).flat()];
}

const sdDigits: Readonly<Record<string, number>> = { NumAcc3: 9, NumAcc4: 8 };

describe('NIST StRD, univariate', () => {
  test.each(nist.univariate.map((set) => [set.name, set] as const))('%s', (name, set) => {
    const values =
      set.digits !== undefined
        ? [...set.digits].map(Number)
        : set.generator !== undefined
          ? alternating(set.generator.first, set.generator.then, set.generator.repeats)
          : set.data;
    expect(values).toHaveLength(set.n);
    const { mean, variance } = moments(values ?? []);
    expect(correctDigits(mean, set.certified.mean)).toBeGreaterThanOrEqual(15);
    expect(correctDigits(Math.sqrt(variance), set.certified.sd)).toBeGreaterThanOrEqual(sdDigits[name] ?? 12);
  });
});

const anovaDigits: Readonly<Record<string, number>> = {
  SmLs04: 9,
  SmLs05: 9,
  SmLs06: 9,
  AtmWtAg: 9,
  SmLs07: 3.5,
  SmLs08: 3.5,
  SmLs09: 3.5,
};

describe('NIST StRD, one-way analysis of variance', () => {
  test.each(nist.anova_oneway.map((set) => [set.name, set] as const))('%s', (name, set) => {
    const groups =
      set.generator !== undefined
        ? set.generator.groups.map(({ first, then }) => alternating(first, then, set.generator.repeats))
        : (set.data ?? []).map(({ values }) => values);
    const anova = classicAnova(groups);
    const { certified } = set;
    const digits = anovaDigits[name] ?? 12;
    expect(anova.df).toEqual([certified.df_between, certified.df_within]);
    expect(correctDigits(anova.between, certified.ss_between)).toBeGreaterThanOrEqual(digits);
    expect(correctDigits(anova.within, certified.ss_within)).toBeGreaterThanOrEqual(digits);
    expect(correctDigits(anova.statistic, certified.F)).toBeGreaterThanOrEqual(digits);
    expect(correctDigits(anova.rSquared, certified.r_squared)).toBeGreaterThanOrEqual(digits);
    expect(correctDigits(Math.sqrt(anova.residualVariance), certified.residual_sd)).toBeGreaterThanOrEqual(
      digits,
    );
  });
});

test('NIST StRD, straight line (Norris), its points taken twice as two groups', () => {
  // the slope does not change when every point stands in two groups; its squared error has 2 (n - 1) - 1 df
  // in place of n - 2, and twice the sum of squares
  const set = at(nist.linear_regression, 0);
  const { x, y } = set.data;
  const observations = [0, 1].flatMap((group) =>
    x.map((covariate, i) => ({ group, covariate, value: at(y, i) })),
  );
  const { slope, residualDf, residualVariance } = commonSlope(observations, 0.95);
  expect(residualDf).toBe(2 * set.n - 3);
  expect(correctDigits(slope.estimate, set.certified.b1)).toBeGreaterThanOrEqual(12);
  const residual = residualVariance * residualDf;
  expect(correctDigits(residual / 2, set.certified.ss_residual)).toBeGreaterThanOrEqual(12);
  const error = slope.standardError * Math.sqrt(residualDf / (set.n - 2));
  expect(correctDigits(error, set.certified.se_b1)).toBeGreaterThanOrEqual(12);
});
