import { familyInterval } from './familyInterval.ts';
import { pairsOf, type PairGap } from './gapInterval.ts';
import type { Moments } from './moments.ts';
import { requireAtLeast, requireFraction } from './statisticsError.ts';
import { welchGap } from './welchT.ts';

/**
 * Gaps of all pairs of k groups, spreads not assumed equal, intervals and p values simultaneous: Games & Howell
 * 1976 (Journal of Educational Statistics 1). Satterthwaite's df a pair; interval estimate -+ q(level; k, df) /
 * sqrt(2) x standard error; p = P(Q > sqrt(2) |statistic|). With k = 2 it is Welch's t.
 *
 * @returns one a pair a < b in the order of `pairsOf`; `statistic` = estimate / standardError, on the t scale
 * (not the q scale, which is sqrt(2) larger)
 * @throws StatisticsError `sample-too-small`, or `no-spread` when both groups of a pair do not vary
 */
export function gamesHowell(groups: readonly Moments[], level: number): readonly PairGap[] {
  requireFraction('gamesHowell', 'level', level);
  requireAtLeast('gamesHowell', 'groups', groups.length, 2);
  const k = groups.length;
  return pairsOf(k).map(([a, b]) => gamesHowellPair(groups, a, b, level));
}

/** One pair of the above, for callers that change one group at a time (leave-one-out). */
export function gamesHowellPair(groups: readonly Moments[], a: number, b: number, level: number): PairGap {
  const k = groups.length;
  const first = groups[a];
  const second = groups[b];
  if (first === undefined || second === undefined) {
    throw new RangeError(`gamesHowell: no groups ${a} and ${b} among ${k}`);
  }
  return { a, b, ...familyInterval(welchGap('gamesHowell', first, second), level, k) };
}
