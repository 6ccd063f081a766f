import { describe, expect, test } from 'vitest';
import { noncentralTUpper } from '../../src/stats/distributions/noncentralT.ts';
import { gaussJacobi } from '../../src/stats/gaussJacobi.ts';
import { luck } from '../../src/stats/luck.ts';
import { moments, type Moments } from '../../src/stats/moments.ts';
import { halfWidthInSd, leastGap, power, shotsNeeded, shotsToShowLevel } from '../../src/stats/power.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { criticalT, welchPower } from '../../src/stats/welchPower.ts';
import { welchT } from '../../src/stats/welchT.ts';
import plan from '../reference/plan/plan.json' with { type: 'json' };
import reference from '../reference/statistics.json' with { type: 'json' };
import { expectClose } from './close.ts';

describe('two groups in rounds, against the paired power.t.test of R (strict)', () => {
  const by = { kind: 'rounds', pairedFrom: 3 } as const;

  test('power and least gap', () => {
    for (const row of plan.ahead.filter(({ n }) => n >= 8)) {
      expectClose(power(5 / 8, { n: row.n, k: 2, level: 0.95, by }), row.power, 1e-8, 1);
      expectClose(leastGap({ n: row.n, k: 2, level: 0.95, by }), row.detectable / 8, 1e-7);
    }
  });

  test('with three groups, or too few rounds, shots judge', () => {
    const shots = { n: 12, k: 3, level: 0.95 };
    expect(power(1, { ...shots, by })).toBe(power(1, shots));
    const two = { n: 7, k: 2, level: 0.95 };
    expect(power(1, { ...two, by: { kind: 'rounds', pairedFrom: 8 } })).toBe(power(1, two));
  });
});

test('the least gap is seen with the chance asked for', () => {
  for (const [n, k, level, chance] of [
    [5, 3, 0.95, 0.8],
    [12, 4, 0.975, 0.9],
    [60, 6, 0.95, 0.5],
  ] as const) {
    const test = { n, k, level };
    expectClose(power(leastGap(test, chance), test), chance, 1e-10);
  }
});

test('shots needed is the first number that is enough', () => {
  // From a handful to thousands, near the guess it is looked for from and far.
  for (const [gap, k] of [
    [3.4, 2],
    [1.2, 3],
    [0.5, 4],
    [0.9, 6],
    [0.05, 12],
  ] as const) {
    const n = shotsNeeded(gap, { k, level: 0.95 });
    expect(power(gap, { n, k, level: 0.95 })).toBeGreaterThanOrEqual(0.8);
    expect(power(gap, { n: n - 1, k, level: 0.95 })).toBeLessThan(0.8);
    const level = shotsToShowLevel(gap, { k, level: 0.95 });
    expect(halfWidthInSd({ n: level, k, level: 0.95 })).toBeLessThan(gap);
    expect(halfWidthInSd({ n: level - 1, k, level: 0.95 })).toBeGreaterThanOrEqual(gap);
  }
});

describe('exact power of Welch and Games-Howell', () => {
  test('five shots, with a gap and without, by simulation', () => {
    // 20,000 seeded sessions each; four standard errors
    const random = seededRandom('welch power');
    const group = (shift: number): Moments => moments([1, 2, 3, 4, 5].map(() => shift + random.normal()));
    for (const gap of [0, 1.7]) {
      const trials = 20_000;
      let seen = 0;
      for (let trial = 0; trial < trials; trial++) {
        const { ci } = welchT(group(gap), group(0), 0.95);
        if (ci[0] > 0 || ci[1] < 0) seen += 1;
      }
      const exact = welchPower(gap, { n: 5, k: 2, level: 0.95 });
      const allowed = 4 * Math.sqrt((exact * (1 - exact)) / trials);
      expect(Math.abs(seen / trials - exact)).toBeLessThan(allowed);
    }
  });

  test('four nodes over the share of the variances are as good as forty', () => {
    for (const [n, k, gap] of [
      [5, 2, 1.5],
      [5, 4, 2],
      [12, 4, 1.2],
      [30, 6, 0.6],
    ] as const) {
      const level = 0.95;
      const delta = gap * Math.sqrt(n / 2);
      const exact = gaussJacobi((n - 3) / 2, -0.5, 40).reduce((sum, { at, weight }) => {
        const t = criticalT(level, k, (2 * (n - 1)) / (1 + at));
        const beyond = noncentralTUpper(t, 2 * n - 2, delta) + noncentralTUpper(t, 2 * n - 2, -delta);
        return sum + weight * beyond;
      }, 0);
      expectClose(welchPower(gap, { n, k, level }), exact, 1e-7, 1, `n ${n} k ${k}`);
    }
  });

  test('two groups, against integrate of R 4.2.2 over the share of the variances', () => {
    for (const { n, gap, power: exact } of plan.welch)
      expectClose(power(gap, { n, k: 2, level: 0.95 }), exact, 1e-5, 1);
  });
});

test('what cannot be planned is refused', () => {
  expect(() => shotsNeeded(0, { k: 2, level: 0.95 })).toThrow('gap must be above 0');
  expect(() => shotsNeeded(1e-4, { k: 2, level: 0.95 })).toThrow('more than 1000000 values');
  expect(() => leastGap({ n: 2, k: 2, level: 0.95 })).toThrow('needs at least 3 values a group, got 2');
});

describe('luck yardstick', () => {
  test('equal groups: the control-chart constants d2', () => {
    // d2 for samples of 2 to 6: ASTM Manual on Presentation of Data and Control Chart Analysis, table of factors
    [1.128, 1.693, 2.059, 2.326, 2.534].forEach((d2, i) => {
      const { average } = luck(new Array<number>(i + 2).fill(3));
      expect((average / 3).toFixed(3)).toBe(d2.toFixed(3));
    });
  });

  test('equal groups: the 95 % point is the printed q(0.05; k, infinity)', () => {
    // Harter 1960, table 3: 2.772 for two; 3.314 3.633 3.858 4.030 for three to six (the latter from memory)
    [2.772, 3.314, 3.633, 3.858, 4.03].forEach((q, i) => {
      expect(luck(new Array<number>(i + 2).fill(1)).upTo).toBeCloseTo(q, 3);
    });
  });

  test("unequal groups, against R's adaptive quadrature", () => {
    for (const row of reference.lucks) {
      const own = luck(row.standardErrors);
      expectClose(own.average, row.average, 1e-9);
      expectClose(own.upTo, row.upTo, 1e-8);
    }
  });

  test('equal and nearly equal groups agree', () => {
    const equal = luck([2, 2, 2]);
    const near = luck([2, 2, 2 + 1e-9]);
    expectClose(near.average, equal.average, 1e-8);
    expectClose(near.upTo, equal.upTo, 1e-8);
  });
});

test('a gap of thousands of standard deviations is found for sure, and at once', () => {
  const started = performance.now();
  for (const by of [undefined, { kind: 'visits', shotsAVisit: 3 } as const])
    for (const gap of [1e3, 1e5, 1e9])
      expect(power(gap, { n: 12, k: 2, level: 0.95, ...(by && { by }) })).toBe(1);
  // Worked out in full the last takes hours.
  expect(performance.now() - started).toBeLessThan(5_000);
});
