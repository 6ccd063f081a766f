import { covariance, type Covariance } from './covariance.ts';
import { fUpper } from './distributions/f.ts';
import { requireAtLeast, StatisticsError } from './statisticsError.ts';
import { cholesky, choleskySolve } from './symmetricMatrix.ts';
import type { FTest } from './welchAnova.ts';

/** `tSquared` and the F it becomes. */
export interface Hotelling extends FTest {
  readonly tSquared: number;
}

/**
 * Do two groups of points share one mean: Hotelling's T-squared with pooled covariance (Hotelling 1931, Annals
 * of Mathematical Statistics 2), F = T^2 (N - p - 1) / (p (N - 2)) on p and N - p - 1. Assumes multivariate
 * normal points of equal covariance.
 *
 * @throws StatisticsError `sample-too-small` unless N - p - 1 >= 1 and each group has two points, `no-spread`
 * when the points lie in fewer than p dimensions
 */
export function hotelling(
  first: readonly (readonly number[])[],
  second: readonly (readonly number[])[],
): Hotelling {
  const a = covariance(first);
  const b = covariance(second);
  const p = a.means.length;
  if (b.means.length !== p)
    throw new StatisticsError('bad-argument', 'hotelling', 'groups differ in dimensions');
  const total = a.n + b.n;
  requireAtLeast('hotelling', 'points', total, p + 2);
  const gap = a.means.map((mean, i) => mean - (b.means[i] ?? 0));
  const solved = choleskySolve(cholesky('hotelling', pooled(a, b)), gap);
  const distance = gap.reduce((sum, value, i) => sum + value * (solved[i] ?? 0), 0);
  const tSquared = ((a.n * b.n) / total) * distance;
  const df = [p, total - p - 1] as const;
  const statistic = (tSquared * df[1]) / (p * (total - 2));
  return { tSquared, statistic, df, p: fUpper(statistic, df[0], df[1]) };
}

function pooled(a: Covariance, b: Covariance): readonly (readonly number[])[] {
  const df = a.n + b.n - 2;
  return a.matrix.map((row, i) =>
    row.map((entry, j) => ((a.n - 1) * entry + (b.n - 1) * (b.matrix[i]?.[j] ?? 0)) / df),
  );
}
