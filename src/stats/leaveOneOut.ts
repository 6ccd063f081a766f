import { gamesHowellPair } from './gamesHowell.ts';
import type { PairGap } from './gapInterval.ts';
import { moments } from './moments.ts';
import { median, medianAbsoluteDeviation } from './quantile.ts';
import { requireAtLeast, StatisticsError } from './statisticsError.ts';

/** The gap of a pair with one value left out. */
export interface LeftOut {
  /** a or b of the pair, and the value's place in that group (from 0) */
  readonly group: number;
  readonly place: number;
  readonly gap: PairGap;
  /** 0.6745 |value - median| / MAD of its group (Iglewicz & Hoaglin 1993); infinite when the MAD is 0 */
  readonly farOut: number;
}

/**
 * The Games-Howell gap of groups a and b among k, worked out again without each value of either in turn. Groups
 * need three values. Errors as `gamesHowell`.
 */
export function leaveOneOut(
  groups: readonly (readonly number[])[],
  a: number,
  b: number,
  level: number,
): readonly LeftOut[] {
  const whole = groups.map((group) => moments(group));
  return [a, b].flatMap((group) => {
    const values = groups[group];
    if (values === undefined) throw new StatisticsError('bad-argument', 'leaveOneOut', `no group ${group}`);
    requireAtLeast('leaveOneOut', 'values a group', values.length, 3);
    const middle = median(values);
    const mad = medianAbsoluteDeviation(values);
    return values.map((value, place) => {
      const rest = moments(values.toSpliced(place, 1));
      const gap = gamesHowellPair(whole.with(group, rest), a, b, level);
      const distance = Math.abs(value - middle);
      return { group, place, gap, farOut: distance === 0 ? 0 : (0.6745 * distance) / mad };
    });
  });
}
