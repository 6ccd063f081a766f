import { normalQuantile } from './distributions/normal.ts';
import { compensatedSumOf } from './compensatedSum.ts';
import { meanOf, moments } from './moments.ts';
import { sorted } from './quantile.ts';
import { requireAtLeast, requireFraction, StatisticsError } from './statisticsError.ts';

/**
 * Interval of a standard deviation that allows for tails: Bonett 2006 ("Approximate confidence interval for
 * standard deviation of nonnormal distributions", Computational Statistics & Data Analysis 50). Kurtosis about a
 * mean trimmed by 1 / (2 sqrt(n - 4)) each end.
 *
 * @throws StatisticsError `sample-too-small` under five values, `no-spread` when all are equal
 */
export function bonettSdInterval(values: readonly number[], level: number): readonly [number, number] {
  requireFraction('bonettSdInterval', 'level', level);
  const n = values.length;
  requireAtLeast('bonettSdInterval', 'values', n, 5);
  const { mean, variance } = moments(values);
  if (!(variance > 0)) throw new StatisticsError('no-spread', 'bonettSdInterval', 'all values are equal');
  const cut = Math.floor(n / (2 * Math.sqrt(n - 4)));
  const kept = sorted(values).slice(cut, n - cut);
  const trimmedMean = meanOf(kept);
  const fourth = compensatedSumOf(values, (value) => (value - trimmedMean) ** 4);
  const second = compensatedSumOf(values, (value) => (value - mean) ** 2);
  const kurtosis = (n * fourth) / (second * second);
  const z = normalQuantile((1 + level) / 2);
  requireAtLeast('bonettSdInterval', 'values at this level', n, Math.floor(z) + 1);
  const small = n / (n - z);
  const standardError = small * Math.sqrt((kurtosis - (n - 3) / n) / (n - 1));
  const centre = Math.log(small * variance);
  return [Math.exp((centre - z * standardError) / 2), Math.exp((centre + z * standardError) / 2)];
}
