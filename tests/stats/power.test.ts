import { describe, expect, test } from 'vitest';
import { luck } from '../../src/stats/luck.ts';
import { moments, type Moments } from '../../src/stats/moments.ts';
import { halfWidthInSd, leastGap, power, shotsNeeded, shotsToShowLevel } from '../../src/stats/power.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { welchPower } from '../../src/stats/welchPower.ts';
import { welchT } from '../../src/stats/welchT.ts';
import reference from '../reference/statistics.json' with { type: 'json' };
import { expectClose } from './close.ts';

describe('two groups, against power.t.test of R (strict)', () => {
  test('power', () => {
    for (const row of reference.powers) {
      expectClose(power(row.gap, { n: row.n, k: 2, level: 0.95 }), row.power, 1e-8, 1);
    }
  });

  test('least gap and shots needed', () => {
    for (const row of reference.leasts) {
      expectClose(leastGap({ n: row.n, k: 2, level: 0.95 }), row.gap, 1e-7);
    }
    for (const row of reference.needs) expect(shotsNeeded(row.gap, 2, 0.95)).toBe(row.n);
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
  for (const [gap, k] of [
    [1.2, 3],
    [0.5, 4],
    [0.9, 6],
  ] as const) {
    const n = shotsNeeded(gap, k, 0.95);
    expect(power(gap, { n, k, level: 0.95 })).toBeGreaterThanOrEqual(0.8);
    expect(power(gap, { n: n - 1, k, level: 0.95 })).toBeLessThan(0.8);
    const level = shotsToShowLevel(gap, k, 0.95);
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

  test('many shots: the formula of the planner', () => {
    const test = { n: 400, k: 3, level: 0.95 };
    expectClose(welchPower(0.2, test), power(0.2, test), 1e-3, 1);
  });
});

test('what cannot be planned is refused', () => {
  expect(() => shotsNeeded(0, 2, 0.95)).toThrow('gap must be above 0');
  expect(() => shotsNeeded(1e-4, 2, 0.95)).toThrow('more than 1000000 values');
  expect(() => leastGap({ n: 1, k: 2, level: 0.95 })).toThrow('needs at least 2 values a group, got 1');
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
