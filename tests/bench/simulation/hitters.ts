import type { Cell } from '../../../src/stats/additiveModel.ts';
import { blockGaps } from '../../../src/stats/blockGaps.ts';
import type { Random } from '../../../src/stats/random.ts';
import { CARRY_SD } from './shots.ts';
import { covers, excludesZero, percent } from './tally.ts';

/** How differently contenders suit hitters: `sd` in yards, for every contender or for the first alone. */
export interface Interaction {
  readonly sd: number;
  readonly of: 'every contender' | 'one contender';
}

export interface EightHitters {
  readonly hitters: number;
  readonly contenders: number;
  readonly shots: number;
  readonly interaction: Interaction;
  readonly falseGaps: number;
  readonly coverage: number;
}

/** Contenders equal on average over golfers: additive model on hitter means, never narrower than the pair's own t. */
export function eightHitters(
  hitters: number,
  contenders: number,
  shots: number,
  interaction: Interaction,
  trials: number,
  random: Random,
): EightHitters {
  const ownSd = (contender: number): number =>
    interaction.of === 'every contender' || contender === 0 ? interaction.sd : 0;
  let apart = 0;
  let covered = 0;
  for (let trial = 0; trial < trials; trial++) {
    const cells: readonly Cell[] = Array.from({ length: hitters }, (_, block) => {
      const skill = 20 * random.normal();
      return Array.from({ length: contenders }, (_cell, treatment) => {
        const suits = ownSd(treatment) * random.normal();
        const luck = (CARRY_SD / Math.sqrt(shots)) * random.normal();
        return { block, treatment, value: 220 + skill + suits + luck };
      });
    }).flat();
    const gaps = blockGaps(cells, 0.95);
    if (gaps.some(excludesZero)) apart += 1;
    covered += gaps.filter((gap) => covers(gap, 0)).length;
  }
  const pairs = (contenders * (contenders - 1)) / 2;
  return {
    hitters,
    contenders,
    shots,
    interaction,
    falseGaps: percent(apart, trials),
    coverage: percent(covered, trials * pairs),
  };
}
