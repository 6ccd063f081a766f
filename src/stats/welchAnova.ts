import { at } from './at.ts';
import { compensatedSum } from './compensatedSum.ts';
import { fUpper } from './distributions/f.ts';
import type { Moments } from './moments.ts';
import { requireAtLeast, StatisticsError } from './statisticsError.ts';

/** An F test of all groups at once: the statistic, its two degrees of freedom, P(F > statistic). */
export interface FTest {
  readonly statistic: number;
  readonly df: readonly [number, number];
  readonly p: number;
}

/**
 * Are all means equal, spreads not assumed equal: Welch 1951 ("On the comparison of several mean values: an
 * alternative approach", Biometrika 38). Two groups or more of two values or more.
 *
 * @throws StatisticsError `sample-too-small`, or `no-spread` when a group does not vary (its weight is infinite)
 */
export function welchAnova(groups: readonly Moments[]): FTest {
  requireAtLeast('welchAnova', 'groups', groups.length, 2);
  for (const { n, variance } of groups) {
    requireAtLeast('welchAnova', 'values a group', n, 2);
    if (!(variance > 0)) throw new StatisticsError('no-spread', 'welchAnova', 'a group does not vary');
  }
  const k = groups.length;
  const weighted = groups.map(({ n, mean, variance }) => ({ n, mean, weight: n / variance }));
  const total = compensatedSum(weighted.map(({ weight }) => weight));
  const shift = at(groups, 0).mean;
  const centre = compensatedSum(weighted.map(({ weight, mean }) => weight * (mean - shift))) / total;
  const between = compensatedSum(weighted.map(({ weight, mean }) => weight * (mean - shift - centre) ** 2));
  const penalty = compensatedSum(weighted.map(({ n, weight }) => (1 - weight / total) ** 2 / (n - 1)));
  const statistic = between / (k - 1) / (1 + (2 * (k - 2) * penalty) / (k * k - 1));
  const df = [k - 1, (k * k - 1) / (3 * penalty)] as const;
  return { statistic, df, p: fUpper(statistic, df[0], df[1]) };
}
