import { describe, expect, test } from 'vitest';
import { betaCdf, betaUpper } from '../../src/stats/distributions/beta.ts';
import { fQuantile, fUpper } from '../../src/stats/distributions/f.ts';
import { normalQuantile, normalUpper } from '../../src/stats/distributions/normal.ts';
import { tQuantile, tUpper } from '../../src/stats/distributions/t.ts';
import { StatisticsError } from '../../src/stats/statisticsError.ts';
import reference from '../reference/distributions.json' with { type: 'json' };
import { expectClose } from './close.ts';

/**
 * Against mpmath with 400 digits (tests/reference/distributions.py). 1e-10 relative is the bar, far tails too.
 * Values below 1e-300 are left out: they have lost digits to the end of the double range.
 */
const BAR = 1e-10;
const seen = (value: number): boolean => value > 1e-300;

describe('tails against 400-digit values', () => {
  test('t', () => {
    for (const { t, df, upper } of reference.t) {
      expectClose(tUpper(t, df), upper, BAR, upper, `t ${t} df ${df}`);
    }
  });

  test('F, the other tail as that of 1 / F', () => {
    for (const { f, df1, df2, lower, upper } of reference.f) {
      const what = `F ${f} on ${df1} and ${df2}`;
      if (seen(lower)) expectClose(fUpper(1 / f, df2, df1), lower, BAR, lower, what);
      if (seen(upper)) expectClose(fUpper(f, df1, df2), upper, BAR, upper, what);
    }
  });

  test('beta, both tails', () => {
    for (const { x, a, b, lower, upper } of reference.beta) {
      expectClose(betaCdf(x, a, b), lower, BAR, lower, `beta ${x} ${a} ${b}`);
      expectClose(betaUpper(x, a, b), upper, BAR, upper, `beta ${x} ${a} ${b}`);
    }
  });

  test('normal', () => {
    for (const { z, upper } of reference.normal) {
      expectClose(normalUpper(z), upper, 1e-13, upper, `z ${z}`);
    }
  });
});

describe('quantiles against 400-digit values', () => {
  test('t, F', () => {
    for (const { p, df, t } of reference.tQuantiles) {
      expectClose(tQuantile(p, df), t, BAR, Math.abs(t), `t ${p} on ${df}`);
    }
    for (const { p, df1, df2, f } of reference.fQuantiles) {
      expectClose(fQuantile(p, df1, df2), f, BAR, f, `F ${p} on ${df1} and ${df2}`);
    }
  });

  test('a quantile leads back to its probability', () => {
    for (const p of [1e-9, 0.01, 0.3, 0.5, 0.77, 0.999]) {
      expectClose(normalUpper(-normalQuantile(p)), p, 1e-12);
      expectClose(tUpper(-tQuantile(p, 6.3), 6.3), p, 1e-10);
      expectClose(fUpper(fQuantile(p, 3, 17), 3, 17), 1 - p, 1e-10, p);
    }
  });
});

describe('edges', () => {
  test('ends of the range', () => {
    expect(tQuantile(0.5, 7)).toBe(0);
    expect(tQuantile(1, 7)).toBe(Infinity);
    expect(fUpper(0, 2, 3)).toBe(1);
    expect(fUpper(Infinity, 2, 3)).toBe(0);
    expect(tUpper(1.96, Infinity)).toBe(normalUpper(1.96));
  });

  test('outside the domain they throw and name the argument', () => {
    expect(() => tUpper(1, 0)).toThrow(StatisticsError);
    expect(() => tUpper(1, 0)).toThrow('df must be above 0, got 0');
    expect(() => tUpper(NaN, 3)).toThrow('t is not a number');
    expect(() => fUpper(NaN, 3, 3)).toThrow(StatisticsError);
    expect(() => normalQuantile(1.2)).toThrow('p must be 0 to 1, got 1.2');
  });
});
