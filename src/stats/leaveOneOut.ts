import { at } from './at.ts';
import { gamesHowellPair } from './gamesHowell.ts';
import type { PairGap } from './gapInterval.ts';
import { meanOf, moments, type Moments } from './moments.ts';
import { once } from './onceEach.ts';
import { median, medianAbsoluteDeviation } from './quantile.ts';
import { requireAtLeast, StatisticsError } from './statisticsError.ts';

/** The gap of a pair with one value left out. */
interface LeftOut {
  /** a or b of the pair, and the value's place in that group (from 0) */
  readonly group: number;
  readonly place: number;
  /** worked out when asked for, once for equal values: its quantile costs more than all the rest */
  readonly gap: () => PairGap;
  /** 0.6745 |value - median| / MAD of its group (Iglewicz & Hoaglin 1993); infinite when the MAD is 0 */
  readonly farOut: number;
}

/**
 * The Games-Howell gap of groups a and b among k, worked out again without each value of either in turn. Groups
 * need three values. Errors as `gamesHowell`.
 */
export function leaveOneOut(
  groups: readonly (readonly number[])[],
  a: number,
  b: number,
  level: number,
): readonly LeftOut[] {
  const whole = groups.map((group) => moments(group));
  return [a, b].flatMap((group) => {
    const values = valuesOf(groups, group);
    const middle = median(values);
    const mad = medianAbsoluteDeviation(values);
    const rests = momentsWithoutEach(values);
    const gaps = new Map<number, () => PairGap>();
    return rests.map((rest, place) => {
      const value = at(values, place);
      const gap = gaps.get(value) ?? once(() => gamesHowellPair(whole.with(group, rest), a, b, level));
      gaps.set(value, gap);
      const distance = Math.abs(value - middle);
      return { group, place, gap, farOut: distance === 0 ? 0 : (0.6745 * distance) / mad };
    });
  });
}

/**
 * Smallest and largest gap of the means of groups a and b without any one value of either. The mean of the rest
 * falls as the value left out grows, so that only the ends of a group have to be tried. Groups need three values.
 */
export function leaveOneOutRange(
  groups: readonly (readonly number[])[],
  a: number,
  b: number,
): readonly [smallest: number, largest: number] {
  const first = meansOf(valuesOf(groups, a));
  const second = meansOf(valuesOf(groups, b));
  return [
    Math.min(first.withoutLargest - second.whole, first.whole - second.withoutSmallest),
    Math.max(first.withoutSmallest - second.whole, first.whole - second.withoutLargest),
  ];
}

/**
 * Moments of a group without each of its values in turn, in one pass from either end: those before it and those
 * after it put together (Chan, Golub & LeVeque 1983). Nothing is subtracted from the whole, so that nothing cancels
 * where one value makes most of the spread.
 *
 * @param values three or more
 */
function momentsWithoutEach(values: readonly number[]): readonly Moments[] {
  requireAtLeast('momentsWithoutEach', 'values', values.length, 3);
  const before = partsUpTo(values);
  const after = partsUpTo(values.toReversed());
  return values.map((_, place) => {
    const n = values.length - 1;
    const { mean, squares } = together(at(before, place), at(after, n - place));
    return { n, mean, variance: squares / (n - 1) };
  });
}

/** Size, mean and sum of squared deviations from it. */
interface Part {
  readonly n: number;
  readonly mean: number;
  readonly squares: number;
}

const nothing: Part = { n: 0, mean: 0, squares: 0 };

/** Of none, the first, the first two, and so on. */
function partsUpTo(values: readonly number[]): readonly Part[] {
  const parts = [nothing];
  let part = nothing;
  for (const value of values) {
    part = together(part, { n: 1, mean: value, squares: 0 });
    parts.push(part);
  }
  return parts;
}

function together(one: Part, other: Part): Part {
  if (one.n === 0) return other;
  if (other.n === 0) return one;
  const n = one.n + other.n;
  const apart = other.mean - one.mean;
  return {
    n,
    mean: one.mean + (apart * other.n) / n,
    squares: one.squares + other.squares + (apart * apart * one.n * other.n) / n,
  };
}

function meansOf(values: readonly number[]) {
  let smallest = 0;
  let largest = 0;
  values.forEach((value, place) => {
    if (value < at(values, smallest)) smallest = place;
    if (value > at(values, largest)) largest = place;
  });
  return {
    whole: meanOf(values),
    withoutSmallest: meanOf(values.toSpliced(smallest, 1)),
    withoutLargest: meanOf(values.toSpliced(largest, 1)),
  };
}

function valuesOf(groups: readonly (readonly number[])[], group: number): readonly number[] {
  const values = groups[group];
  if (values === undefined) throw new StatisticsError('bad-argument', 'leaveOneOut', `no group ${group}`);
  requireAtLeast('leaveOneOut', 'values a group', values.length, 3);
  return values;
}
