import { compensatedSum } from './compensatedSum.ts';
import { familyInterval } from './familyInterval.ts';
import { pairsOf, type PairGap } from './gapInterval.ts';
import type { Moments } from './moments.ts';
import { requireAtLeast, requireFraction, StatisticsError } from './statisticsError.ts';

/**
 * Gaps of all pairs with one pooled variance, intervals and p simultaneous (Tukey 1953, Kramer 1956, Biometrics
 * 12). Assumes equal spreads; `statistic` is on the t scale.
 *
 * @throws StatisticsError `sample-too-small`, or `no-spread` when no group varies
 */
export function tukeyKramer(groups: readonly Moments[], level: number): readonly PairGap[] {
  requireFraction('tukeyKramer', 'level', level);
  requireAtLeast('tukeyKramer', 'groups', groups.length, 2);
  const df = compensatedSum(groups.map(({ n }) => n - 1));
  requireAtLeast('tukeyKramer', 'values beyond one a group', df, 1);
  const pooled = compensatedSum(groups.map(({ n, variance }) => (n - 1) * variance)) / df;
  if (!(pooled > 0)) throw new StatisticsError('no-spread', 'tukeyKramer', 'no group varies');
  return pairsOf(groups.length).flatMap(([a, b]) => {
    const first = groups[a];
    const second = groups[b];
    if (first === undefined || second === undefined) return [];
    const standardError = Math.sqrt(pooled * (1 / first.n + 1 / second.n));
    return [{ a, b, ...familyInterval(first.mean - second.mean, standardError, df, level, groups.length) }];
  });
}
