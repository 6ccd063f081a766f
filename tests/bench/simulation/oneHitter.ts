import { gamesHowell } from '../../../src/stats/gamesHowell.ts';
import { moments } from '../../../src/stats/moments.ts';
import type { Random } from '../../../src/stats/random.ts';
import { CARRY_SD, mishitLoss, normalShots } from './shots.ts';
import { covers, excludesZero, percent } from './tally.ts';

export type Spreads = 'equal' | '2:1';

export interface OneHitter {
  readonly contenders: number;
  readonly shots: readonly number[];
  readonly spreads: Spreads;
  readonly strikes: 'normal' | 'with mishits';
  /** sessions of equal contenders in which any pair is called apart, % */
  readonly falseGaps: number;
  /** intervals of a pair that hold its true gap, % */
  readonly coverage: number;
}

/** Equal contenders, one hitter, independent shots: Welch for two, Games-Howell for more, at 95 %. */
export function oneHitter(
  shots: readonly number[],
  spreads: Spreads,
  strikes: OneHitter['strikes'],
  trials: number,
  random: Random,
): OneHitter {
  const k = shots.length;
  let anyApart = 0;
  let covered = 0;
  for (let trial = 0; trial < trials; trial++) {
    const groups = shots.map((n, i) => {
      const sd = CARRY_SD * (spreads === '2:1' && i % 2 === 1 ? 2 : 1);
      const struck = normalShots(n, 0, sd, random);
      return moments(strikes === 'normal' ? struck : struck.map((shot) => shot - mishitLoss(random)));
    });
    const gaps = gamesHowell(groups, 0.95);
    if (gaps.some(excludesZero)) anyApart += 1;
    covered += gaps.filter((gap) => covers(gap, 0)).length;
  }
  const pairs = (k * (k - 1)) / 2;
  return {
    contenders: k,
    shots,
    spreads,
    strikes,
    falseGaps: percent(anyApart, trials),
    coverage: percent(covered, trials * pairs),
  };
}
