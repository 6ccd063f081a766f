import { requireAtLeast, requireFinite, StatisticsError } from './statisticsError.ts';

/**
 * Sample quantile, type 7 of Hyndman & Fan 1996 ("Sample quantiles in statistical packages", The American
 * Statistician 50): straight lines between the sorted values, position (n - 1) p. The default of R and NumPy.
 *
 * @throws StatisticsError `sample-too-small` when empty, `bad-argument` unless 0 <= p <= 1 and values are finite
 */
export function quantile(values: readonly number[], p: number): number {
  requireAtLeast('quantile', 'values', values.length, 1);
  requireFinite('quantile', values);
  return quantileOfSorted(sorted(values), p);
}

/** The middle value, or the mean of the middle two. */
export function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}

/** Median absolute deviation from the median, not scaled: times 1.4826 it estimates a normal sd. */
export function medianAbsoluteDeviation(values: readonly number[]): number {
  const middle = median(values);
  return median(values.map((value) => Math.abs(value - middle)));
}

/** Ascending copy. */
export function sorted(values: readonly number[]): readonly number[] {
  // Typed arrays sort numbers as numbers, and several times faster than any function that compares.
  return Array.from(Float64Array.from(values).sort());
}

/** Type-7 quantile of values already in ascending order, not empty. */
export function quantileOfSorted(ascending: ArrayLike<number>, p: number): number {
  if (!(p >= 0 && p <= 1))
    throw new StatisticsError('bad-argument', 'quantile', `p must be 0 to 1, got ${p}`);
  const position = (ascending.length - 1) * p;
  const below = Math.floor(position);
  const low = ascending[below] ?? 0;
  const high = ascending[below + 1] ?? low;
  return low + (position - below) * (high - low);
}
