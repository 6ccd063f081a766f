import { at } from './at.ts';
import { compensatedSum, compensatedSumOf } from './compensatedSum.ts';
import { fUpper } from './distributions/f.ts';
import { moments } from './moments.ts';
import { requireAtLeast, StatisticsError } from './statisticsError.ts';
import type { FTest } from './welchAnova.ts';

/** One-way table: sums of squares in the values' unit squared. */
interface ClassicAnova extends FTest {
  readonly between: number;
  readonly within: number;
  /** within / its df: the pooled variance */
  readonly residualVariance: number;
  /** between / (between + within) */
  readonly rSquared: number;
}

/**
 * One-way analysis of variance, equal spreads assumed (Fisher 1925). Values are shifted by the first one before
 * anything is summed, so that a large common level costs no digits.
 *
 * @throws StatisticsError `sample-too-small` under two groups, an empty group, or no value beyond the group
 * means; `no-spread` when no group varies
 */
export function classicAnova(groups: readonly (readonly number[])[]): ClassicAnova {
  requireAtLeast('classicAnova', 'groups', groups.length, 2);
  requireAtLeast('classicAnova', 'values a group', Math.min(...groups.map((group) => group.length)), 1);
  const shift = at(at(groups, 0), 0);
  const summaries = groups.map((group) => {
    const shifted = group.map((value) => value - shift);
    if (shifted.length === 1) return { n: 1, mean: at(shifted, 0), variance: 0 };
    return moments(shifted);
  });
  const total = compensatedSum(summaries.map(({ n }) => n));
  requireAtLeast('classicAnova', 'values beyond one a group', total - groups.length, 1);
  const grand = compensatedSumOf(groups.flat(), (value) => value - shift) / total;
  const between = compensatedSum(summaries.map(({ n, mean }) => n * (mean - grand) ** 2));
  const within = compensatedSum(summaries.map(({ n, variance }) => (n - 1) * variance));
  if (!(within > 0)) throw new StatisticsError('no-spread', 'classicAnova', 'no group varies');
  const df = [groups.length - 1, total - groups.length] as const;
  const residualVariance = within / df[1];
  const statistic = between / df[0] / residualVariance;
  return {
    statistic,
    df,
    p: fUpper(statistic, df[0], df[1]),
    between,
    within,
    residualVariance,
    rSquared: between / (between + within),
  };
}
