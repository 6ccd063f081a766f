import { describe, expect, test } from 'vitest';
import { foresee, mostSwings, proposedShots } from '../../../src/intake/plan/foresight.ts';
import reference from '../../reference/plan/plan.json' with { type: 'json' };

const two = (sd: number, matters: number, shotsEach = 12) =>
  foresee({ contenders: 2, shotsEach, sd, sdRange: null, matters });

describe('two contenders, against power.t.test and qt of R 4.2.2', () => {
  test.each(reference.needs)('sd $sd, gap $gap: $n shots with each', ({ sd, gap, n }) => {
    expect(two(sd, gap).needed).toBe(n);
  });

  test.each(reference.ahead)('$n shots with each', ({ n, ...figures }) => {
    const ahead = two(8, 5, n);
    expect(ahead.power).toBeCloseTo(figures.power, 7);
    expect(ahead.detectable).toBeCloseTo(figures.detectable, 6);
    expect(ahead.halfWidth).toBeCloseTo(figures.halfWidth, 8);
    expect(ahead.luck.average).toBeCloseTo(figures.luckAverage, 8);
    expect(ahead.luck.upTo).toBeCloseTo(figures.luckUpTo, 8);
    expect(ahead.levelReachable).toBe(figures.halfWidth < 5);
  });
});

test('luck of three and four is d2 standard errors (ASTM manual on control charts: 1.693, 2.059)', () => {
  for (const [contenders, d2] of [
    [3, 1.693],
    [4, 2.059],
  ] as const) {
    const { luck } = foresee({ contenders, shotsEach: 16, sd: 8, sdRange: null, matters: 5 });
    expect(luck.average / 2).toBeCloseTo(d2, 3);
  }
});

test('every further contender takes more shots', () => {
  const needed = [2, 3, 4, 5, 6].map(
    (contenders) => foresee({ contenders, shotsEach: 12, sd: 8, sdRange: null, matters: 5 }).needed ?? NaN,
  );
  expect([...needed].sort((a, b) => a - b)).toEqual(needed);
  expect(new Set(needed).size).toBe(5);
});

test('level: the first number at which it can be shown is the first at which the range is narrow enough', () => {
  const first = two(8, 5).neededForLevel ?? NaN;
  expect(two(8, 5, first).levelReachable).toBe(true);
  expect(two(8, 5, first - 1).levelReachable).toBe(false);
});

test('a spread that is not known exactly gives a range of shots around the count', () => {
  const { needed, neededRange } = foresee({
    contenders: 2,
    shotsEach: 12,
    sd: 8,
    sdRange: [6, 10],
    matters: 5,
  });
  expect([neededRange?.[0], needed, neededRange?.[1]]).toEqual([24, 42, 64]);
});

test('a count that nobody would hit is none', () => {
  expect(two(100, 1).needed).toBe(null);
});

test('proposed are the shots needed, 12 at least, in whole visits, and no more than 60 swings in all', () => {
  expect(proposedShots(2, 3, 1)).toBe(12);
  expect(proposedShots(2, 17, 1)).toBe(17);
  expect(proposedShots(2, 17, 2)).toBe(18);
  expect(proposedShots(2, 64, 1)).toBe(30);
  expect(proposedShots(3, null, 3)).toBe(18);
  for (const contenders of [2, 3, 4, 5, 6])
    for (const visit of [1, 2, 3])
      expect(contenders * proposedShots(contenders, null, visit)).toBeLessThanOrEqual(mostSwings);
});
