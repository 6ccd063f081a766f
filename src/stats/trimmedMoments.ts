import { at } from './at.ts';
import { meanOf, moments, type Moments } from './moments.ts';
import { sorted } from './quantile.ts';
import { requireAtLeast, StatisticsError } from './statisticsError.ts';

/** Share cut off each end by the usual trimmed mean. */
const USUAL_TRIM = 0.2;

/**
 * A trimmed mean as moments that the methods on means take unchanged: `n` is the number of values kept (h),
 * `mean` their mean, `variance` such that variance / n is the squared standard error of the trimmed mean,
 * (N - 1) s_w^2 / (h (h - 1)) with s_w^2 the Winsorised variance. Welch's t on such moments is Yuen's test
 * (Yuen 1974, Biometrika 61; Wilcox, *Introduction to Robust Estimation and Hypothesis Testing*, 5.3): its df
 * come from h - 1.
 *
 * @param share cut off each end, rounded down to whole values; 0 gives the plain moments
 * @throws StatisticsError `sample-too-small` when fewer than two values are kept
 */
export function trimmedMoments(values: readonly number[], share: number = USUAL_TRIM): Moments {
  if (!(share >= 0 && share < 0.5)) {
    throw new StatisticsError('bad-argument', 'trimmedMoments', `share must be 0 to below 0.5, got ${share}`);
  }
  const n = values.length;
  const cut = Math.floor(share * n + 1e-9);
  const kept = n - 2 * cut;
  requireAtLeast('trimmedMoments', 'values after trimming', kept, 2);
  const ascending = sorted(values);
  const lowest = at(ascending, cut);
  const highest = at(ascending, n - 1 - cut);
  const winsorised = ascending.map((value) => Math.min(highest, Math.max(lowest, value)));
  return {
    n: kept,
    mean: meanOf(ascending.slice(cut, n - cut)),
    variance: ((n - 1) * moments(winsorised).variance) / (kept - 1),
  };
}
