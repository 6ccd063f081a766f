import { compensatedSum } from './compensatedSum.ts';
import { chiSquareUpper } from './distributions/chiSquare.ts';
import { midranks } from './midranks.ts';
import { requireAtLeast, requireFinite, StatisticsError } from './statisticsError.ts';

/**
 * Do k groups come from one distribution: H of the rank sums, corrected for ties, p by the chi-square
 * approximation with k - 1 df (Kruskal & Wallis 1952, JASA 47).
 *
 * @throws StatisticsError `sample-too-small` under two groups or an empty group, `no-spread` when all are equal
 */
export function kruskalWallis(groups: readonly (readonly number[])[]): {
  readonly statistic: number;
  readonly df: number;
  readonly p: number;
} {
  requireAtLeast('kruskalWallis', 'groups', groups.length, 2);
  requireAtLeast('kruskalWallis', 'values a group', Math.min(...groups.map((group) => group.length)), 1);
  const all = groups.flat();
  requireFinite('kruskalWallis', all);
  const n = all.length;
  const { ranks, ties } = midranks(all);
  const tied = compensatedSum(ties.map((size) => size ** 3 - size));
  if (tied === n ** 3 - n) throw new StatisticsError('no-spread', 'kruskalWallis', 'all values are equal');
  let from = 0;
  const parts = groups.map((group) => {
    const own = ranks.slice(from, from + group.length);
    from += group.length;
    return own.length * (compensatedSum(own) / own.length - (n + 1) / 2) ** 2;
  });
  const statistic = ((12 / (n * (n + 1))) * compensatedSum(parts)) / (1 - tied / (n ** 3 - n));
  return { statistic, df: groups.length - 1, p: chiSquareUpper(statistic, groups.length - 1) };
}
