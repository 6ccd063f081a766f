import { describe, expect, test } from 'vitest';
import { reachOf } from '../../src/findings/reach.ts';
import { mostShots } from '../../src/findings/thresholds.ts';
import type { Sample } from '../../src/findings/samples.ts';
import { at } from '../stats/close.ts';

/** k contenders with n shots each, all of standard deviation `sd` exactly. */
function samples(k: number, n: number, sd: number): Sample[] {
  const steps = Array.from({ length: n }, (_, index) => index - (n - 1) / 2);
  const own = Math.sqrt(steps.reduce((sum, step) => sum + step * step, 0) / (n - 1));
  return Array.from({ length: k }, (_, index) => ({
    contender: `c${index}`,
    values: steps.map((step) => 200 + index + (sd * step) / own),
  }));
}
const reach = (k: number, n: number, sd: number, matters = 5, level = 0.95) => {
  const found = reachOf(samples(k, n, sd), { level, step: 0.1, matters });
  if (found === null) throw new Error('no reach');
  return found;
};

describe('the least gap found four times in five', () => {
  // Figures of our own simulation with SciPy, stated to within 2 %: k 4, n 12: 1.50 sd; k 2, n 12: 1.20 sd.
  test.each([
    [4, 12, 1.5],
    [2, 12, 1.2],
  ])('%i contenders, %i shots each: %d sd', (k, n, figure) => {
    expect(Math.abs(reach(k, n, 8).detectable / 8 / figure - 1)).toBeLessThan(0.02);
  });

  // R 4.2.2: uniroot over the power of Welch's interval, integrated over the share of the variances as in plan.R
  test('for two it is that of Welch', () => {
    expect(reach(2, 12, 1).detectable).toBeCloseTo(1.201085, 5);
  });

  test('two primaries make it larger', () => {
    expect(reach(2, 12, 8, 5, 0.975).detectable).toBeGreaterThan(reach(2, 12, 8).detectable);
  });
});

describe('luck: best minus worst average of equal contenders', () => {
  // 95 % points in units of s / sqrt(n): the normal range quantiles q(0.95; k, infinity), Harter 1960, table 3
  test.each([
    [2, 2.77],
    [3, 3.31],
    [4, 3.63],
    [5, 3.86],
    [6, 4.03],
  ])('%i contenders: passed in 5 of 100 tests at %d', (k, factor) => {
    expect(reach(k, 16, 8).luck.upTo / (8 / 4)).toBeCloseTo(factor, 2);
  });

  // d2 of the control charts (ASTM manual on control chart analysis)
  test.each([
    [2, 1.128],
    [3, 1.693],
    [4, 2.059],
    [5, 2.326],
    [6, 2.534],
  ])('%i contenders: %d on average', (k, d2) => {
    expect(reach(k, 16, 8).luck.average / (8 / 4)).toBeCloseTo(d2, 3);
  });
});

describe('shots needed', () => {
  // Two groups, 80 % power, 5 % two-sided, Welch: the least n by R 4.2.2, integrated as in plan.R. sd down, gap 3, 5, 7, 10, 15 yd across.
  const gaps = [3, 5, 7, 10, 15];
  const table: readonly (readonly [number, readonly number[]])[] = [
    [4, [29, 12, 7, 5, 3]],
    [6, [64, 24, 13, 7, 5]],
    [8, [113, 42, 22, 12, 6]],
    [10, [176, 64, 34, 17, 9]],
    [12, [253, 92, 48, 24, 12]],
    [15, [394, 143, 74, 37, 17]],
  ];

  test.each(table)('lie round those of a known sd of %i yd', (sd, counts) => {
    gaps.forEach((gap, index) => {
      const [few, many] = reach(2, 12, sd, gap).shotsNeeded;
      expect(few).toBeLessThanOrEqual(Math.ceil(at(counts, index) / 5) * 5);
      expect(many).toBeGreaterThanOrEqual(at(counts, index));
      expect([few % 5, many % 5]).toEqual([0, 0]);
    });
  });

  test.each(table)(
    'with so many shots that the sd is sure, the range closes on the table (sd %i yd)',
    (sd, counts) => {
      gaps.forEach((gap, index) => {
        const [few, many] = reach(2, 4000, sd, gap).shotsNeeded;
        const count = at(counts, index);
        expect(few).toBeLessThanOrEqual(Math.ceil(count / 5) * 5);
        expect(many).toBeGreaterThanOrEqual(count);
        // 4,000 shots leave the sd within 2.5 %, the count within 5 %, and rounding within 5
        expect(many).toBeLessThanOrEqual(1.06 * count + 5);
        expect(few).toBeGreaterThanOrEqual(0.94 * count - 1e-9);
      });
    },
  );

  test('nobody hits more than a thousand', () => {
    expect(reach(2, 12, 15, 0.01)).toMatchObject({
      shotsNeeded: [mostShots, mostShots],
      shotsToShowLevel: mostShots,
    });
    expect(reach(6, 12, 15, 1e-9).shotsToShowLevel).toBe(mostShots);
  });
});

describe('too short to show that nothing matters', () => {
  // m / sd at which the half-width of the interval equals m: 0.85 for k 2, n 12 (half-widths in sd: 12: 0.85, 20: 0.64,
  // t quantile of R 4.2.2: qt(.975, 22) * sqrt(2 / 12) = 0.8467, qt(.975, 38) * sqrt(2 / 20) = 0.6402)
  test.each([
    [12, 0.8467],
    [20, 0.6402],
  ])('with %i shots each under m = %d sd', (n, half) => {
    expect(reach(2, n, 1, half * 1.001).shotsToShowLevel).toBeNull();
    expect(reach(2, n, 1, half * 0.999).shotsToShowLevel).toBeGreaterThan(n);
  });
});

describe('chance to find what matters', () => {
  // R 4.2.2: the power of Welch's interval, integrated over the share of the variances as in plan.R
  test.each([
    [12, 0.3071087],
    [20, 0.4853692],
  ])('%i shots each', (n, chance) => {
    expect(reach(2, n, 8).powerAtMatters).toBeCloseTo(chance, 5);
  });
});

test('nothing can be said of one contender, or of readings that are all the same', () => {
  expect(reachOf(samples(1, 12, 8), { level: 0.95, step: 0.1, matters: 5 })).toBeNull();
  expect(
    reachOf([...samples(1, 12, 8), { contender: 'few', values: [1, 2, 3, 4] }], {
      level: 0.95,
      step: 0.1,
      matters: 5,
    }),
  ).toBeNull();
  const flat = ['a', 'b'].map((contender) => ({ contender, values: Array<number>(9).fill(7) }));
  expect(reachOf(flat, { level: 0.95, step: 0.1, matters: 5 })).toBeNull();
});
