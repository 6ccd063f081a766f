import { describe, expect, test } from 'vitest';
import { foresee, mostSwings, proposedShots } from '../../../src/intake/plan/foresight.ts';
import reference from '../../reference/plan/plan.json' with { type: 'json' };

const turns = { kind: 'rotation' } as const;
const two = (sd: number, matters: number, shotsEach = 12) =>
  foresee({ contenders: 2, shotsEach, sd, sdRange: null, turns, matters });

describe('two contenders in rounds, against R 4.2.2: paired power.t.test from eight rounds, Welch by integrate under them', () => {
  test.each(reference.needs)('sd $sd, gap $gap: $n shots with each', ({ sd, gap, n }) => {
    expect(two(sd, gap).needed).toBe(n);
  });

  test.each(reference.ahead)('$n shots with each', ({ n, ...figures }) => {
    const ahead = two(8, 5, n);
    expect(ahead.power).toBeCloseTo(figures.power, 6);
    // A root of an average over twelve points: good to a hundred-thousandth of a yard.
    expect(ahead.detectable).toBeCloseTo(figures.detectable, 4);
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
    const { luck } = foresee({ contenders, shotsEach: 16, sd: 8, sdRange: null, turns, matters: 5 });
    expect(luck.average / 2).toBeCloseTo(d2, 3);
  }
});

test('every further contender takes more shots', () => {
  const needed = [2, 3, 4, 5, 6].map(
    (contenders) =>
      foresee({ contenders, shotsEach: 12, sd: 8, sdRange: null, turns, matters: 5 }).needed ?? NaN,
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
    turns,
    matters: 5,
  });
  expect([neededRange?.[0], needed, neededRange?.[1]]).toEqual([25, 43, 65]);
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

describe('mini-blocks: a gap must show from visit to visit too', () => {
  const visits = (contenders: number, shotsEach: number, shotsAVisit: number, matters: number) =>
    foresee({
      contenders,
      shotsEach,
      sd: 8,
      sdRange: null,
      turns: { kind: 'mini-blocks', shotsAVisit },
      matters,
    });

  // Our own simulation with NumPy, 100,000 sessions a row, standard error 0.15 points: contenders, shots, gap in
  // standard deviations, found of 100 by shots and on visits at 90 %.
  test.each([
    [2, 9, 1.4327, 58.2],
    [2, 12, 1.22, 68.2],
    [2, 18, 0.98, 75.4],
    [3, 9, 1.7, 70.6],
    [3, 12, 1.43, 75.7],
    [4, 12, 1.56, 78.8],
  ])('%i contenders, %i shots in visits of three, a gap of %d sd: found in %d of 100', (k, n, gap, found) => {
    expect(Math.abs(100 * visits(k, n, 3, 8 * gap).power - found)).toBeLessThan(1.5);
  });

  test('takes more shots, in whole visits, and sees less', () => {
    const { needed, detectable } = visits(2, 12, 3, 5);
    expect(needed).toBeGreaterThan(two(8, 5).needed ?? NaN);
    expect((needed ?? NaN) % 3).toBe(0);
    expect(visits(2, needed ?? NaN, 3, 5).power).toBeGreaterThanOrEqual(0.8);
    expect(visits(2, (needed ?? NaN) - 3, 3, 5).power).toBeLessThan(0.8);
    expect(visits(2, 12, 3, detectable).power).toBeCloseTo(0.8, 9);
    expect(detectable).toBeGreaterThan(two(8, 5).detectable);
  });
});
