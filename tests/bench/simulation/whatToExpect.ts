import { moments } from '../../../src/stats/moments.ts';
import type { Random } from '../../../src/stats/random.ts';
import { welchT } from '../../../src/stats/welchT.ts';
import { CARRY_SD, MATTERS, normalShots } from './shots.ts';
import { excludesZero, percent } from './tally.ts';

export interface WhatToExpect {
  readonly shots: number;
  /** true gap, yards */
  readonly trueGap: number;
  /** interval holds 0 and reaches beyond the gap that matters, % */
  readonly tooClose: number;
  /** interval holds 0 and stays inside, % */
  readonly level: number;
  /** interval leaves out 0, % */
  readonly gapFound: number;
  /** where a gap is found: its mean size over the true one; null for a true gap of 0 */
  readonly foundOverTrue: number | null;
}

/** One pair, one hitter: what a test of this length comes to. */
export function whatToExpect(shots: number, trueGap: number, trials: number, random: Random): WhatToExpect {
  let tooClose = 0;
  let level = 0;
  const found: number[] = [];
  for (let trial = 0; trial < trials; trial++) {
    const a = moments(normalShots(shots, trueGap, CARRY_SD, random));
    const b = moments(normalShots(shots, 0, CARRY_SD, random));
    const gap = welchT(a, b, 0.95);
    if (excludesZero(gap)) found.push(Math.abs(gap.estimate));
    else if (gap.ci[0] > -MATTERS && gap.ci[1] < MATTERS) level += 1;
    else tooClose += 1;
  }
  const mean = found.reduce((sum, size) => sum + size, 0) / Math.max(1, found.length);
  return {
    shots,
    trueGap,
    tooClose: percent(tooClose, trials),
    level: percent(level, trials),
    gapFound: percent(found.length, trials),
    foundOverTrue: trueGap === 0 ? null : Math.round((100 * mean) / trueGap) / 100,
  };
}
