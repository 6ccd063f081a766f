import { at } from './at.ts';
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
  const low = at(ascending, below);
  const high = ascending[below + 1] ?? low;
  return low + (position - below) * (high - low);
}

/**
 * Two type-7 quantiles of values not in order, the first below the second: only what lies outside them is put in order,
 * as many values as that takes, which for quantiles far out is a fraction of a sort.
 *
 * @throws StatisticsError `sample-too-small` when empty, `bad-argument` unless 0 <= low <= high <= 1
 */
export function outerQuantiles(values: Float64Array, low: number, high: number): readonly [number, number] {
  const n = values.length;
  requireAtLeast('outerQuantiles', 'values', n, 1);
  if (!(low >= 0 && low <= high && high <= 1)) {
    throw new StatisticsError('bad-argument', 'outerQuantiles', `p must be 0 to 1, got ${low} and ${high}`);
  }
  const below = Math.floor((n - 1) * low);
  const above = Math.floor((n - 1) * high);
  const least = outermost(values, Math.min(n, below + 2), 1);
  const greatest = outermost(values, n - above, -1);
  const between = (position: number, from: number, to: number): number =>
    from + (position - Math.floor(position)) * (to - from);
  const lowest = at(least, below);
  const highest = at(greatest, n - 1 - above);
  return [
    between((n - 1) * low, lowest, least[below + 1] ?? lowest),
    between((n - 1) * high, highest, greatest[n - 2 - above] ?? highest),
  ];
}

/** The `count` least (`sign` 1) or greatest (-1) values, the outermost first. */
function outermost(values: Float64Array, count: number, sign: 1 | -1): Float64Array {
  const found = new Float64Array(count).fill(sign * Infinity);
  let inmost = sign * Infinity;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? 0;
    if (sign > 0 ? value >= inmost : value <= inmost) continue;
    let at = count - 1;
    for (; at > 0; at--) {
      const before = found[at - 1] ?? 0;
      if (sign > 0 ? before <= value : before >= value) break;
      found[at] = before;
    }
    found[at] = value;
    inmost = found[count - 1] ?? 0;
  }
  return found;
}
