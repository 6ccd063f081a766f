import { at } from './at.ts';
import { compensatedSum, compensatedSumOf } from './compensatedSum.ts';
import { requireAtLeast, requireFinite } from './statisticsError.ts';

/** Size, mean and sample variance (divisor n - 1) of one group; all that the methods on means need. */
export interface Moments {
  readonly n: number;
  readonly mean: number;
  readonly variance: number;
}

/**
 * Moments of a group of at least two values, in the values' own unit (variance in its square).
 *
 * Shifted two-pass algorithm with compensated sums (Chan, Golub & LeVeque 1983, "Algorithms for computing the
 * sample variance", The American Statistician 37: corrected two-pass): the first value is subtracted, the mean
 * of the differences found, then squared deviations from that mean, corrected for the mean's own rounding.
 *
 * @throws StatisticsError `sample-too-small` under two values, `bad-argument` for a value that is not finite
 */
export function moments(values: readonly number[]): Moments {
  requireAtLeast('moments', 'values', values.length, 2);
  requireFinite('moments', values);
  const n = values.length;
  const mean = meanOf(values);
  const shift = at(values, 0);
  const shiftedMean = compensatedSumOf(values, (value) => value - shift) / n;
  const left = compensatedSumOf(values, (value) => value - shift - shiftedMean);
  const squares = compensatedSumOf(values, (value) => {
    const deviation = value - shift - shiftedMean;
    return deviation * deviation;
  });
  return { n, mean, variance: Math.max(0, squares - (left * left) / n) / (n - 1) };
}

/** Arithmetic mean by compensated sum. @throws StatisticsError `sample-too-small` when empty */
export function meanOf(values: readonly number[]): number {
  requireAtLeast('meanOf', 'values', values.length, 1);
  return compensatedSum(values) / values.length;
}
