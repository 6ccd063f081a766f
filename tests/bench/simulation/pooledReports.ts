import { meanInterval } from '../../../src/stats/meanInterval.ts';
import { randomEffects } from './randomEffects.ts';
import type { Random } from '../../../src/stats/random.ts';
import { CARRY_SD } from './shots.ts';
import { excludesZero, percent } from './tally.ts';

export interface PooledReports {
  /** shots a contender in each report */
  readonly shots: readonly number[];
  /** standard deviation of the true gap between reports, yards */
  readonly between: number;
  readonly unweighted: number;
  readonly hartungKnapp: number;
}

/** Reports whose true gaps average 0: how often each way of pooling calls the pooled gap off zero, %. */
export function pooledReports(
  shots: readonly number[],
  between: number,
  trials: number,
  random: Random,
): PooledReports {
  let plain = 0;
  let weighted = 0;
  for (let trial = 0; trial < trials; trial++) {
    const studies = shots.map((n) => {
      const error = CARRY_SD * Math.sqrt(2 / n);
      const estimate = between * random.normal() + error * random.normal();
      const degrees = 2 * n - 2;
      const squares = Array.from({ length: degrees }, () => random.normal() ** 2);
      const spread = squares.reduce((sum, square) => sum + square, 0) / degrees;
      return { estimate, standardError: error * Math.sqrt(spread) };
    });
    if (
      excludesZero(
        meanInterval(
          studies.map(({ estimate }) => estimate),
          0.95,
        ),
      )
    )
      plain += 1;
    if (excludesZero(randomEffects(studies, 0.95).hartungKnapp)) weighted += 1;
  }
  return { shots, between, unweighted: percent(plain, trials), hartungKnapp: percent(weighted, trials) };
}
