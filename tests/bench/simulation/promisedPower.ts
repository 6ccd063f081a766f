import { gamesHowell } from '../../../src/stats/gamesHowell.ts';
import { moments } from '../../../src/stats/moments.ts';
import { power } from '../../../src/stats/power.ts';
import type { Random } from '../../../src/stats/random.ts';
import { normalShots } from './shots.ts';
import { excludesZero, percent } from './tally.ts';

export interface PromisedPower {
  readonly contenders: number;
  readonly shots: number;
  /** true gap of one pair, in standard deviations */
  readonly gap: number;
  /** chance of seeing it, as promised and as found, % */
  readonly promised: number;
  readonly found: number;
}

/** One contender better than the others by `gap` standard deviations: how often its gap to the first is seen. */
export function promisedPower(
  contenders: number,
  shots: number,
  gap: number,
  trials: number,
  random: Random,
): PromisedPower {
  let seen = 0;
  for (let trial = 0; trial < trials; trial++) {
    const groups = Array.from({ length: contenders }, (_, i) =>
      moments(normalShots(shots, i === 1 ? gap : 0, 1, random)),
    );
    const [first] = gamesHowell(groups, 0.95);
    if (first !== undefined && excludesZero(first)) seen += 1;
  }
  const test = { n: shots, k: contenders, level: 0.95 };
  return {
    contenders,
    shots,
    gap,
    promised: percent(power(gap, test), 1),
    found: percent(seen, trials),
  };
}
