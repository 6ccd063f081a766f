import { at } from '../stats/at.ts';
import { additiveModel, type Cell } from '../stats/additiveModel.ts';
import { blockGaps } from '../stats/blockGaps.ts';
import { meanOf } from '../stats/moments.ts';
import { median } from '../stats/quantile.ts';
import { StatisticsError } from '../stats/statisticsError.ts';
import { noGaps, type Gap, type Gaps } from './gap.ts';
import type { Sample } from './samples.ts';
import { fewestHittersAsUnit, fewestInCell, usualCell } from './thresholds.ts';

/**
 * The gaps for six or more hitters with the hitter's mean as the unit, so that they speak of golfers like these:
 * additive model of hitter and contender on unweighted means, half-width never under the pair's own paired t.
 *
 * @param byHitter a hitter each: the samples of all contenders, in one order
 */
export function hitterModelGaps(byHitter: readonly (readonly Sample[])[], level: number): Gaps {
  const contenders = byHitter[0]?.map(({ contender }) => contender) ?? [];
  const sizes = byHitter
    .flatMap((samples) => samples.map(({ values }) => values.length))
    .filter((size) => size > 0);
  const least = sizes.length > 0 && median(sizes) >= usualCell ? fewestInCell : 1;
  // A contender without a cell would leave the table in two pieces.
  const hit = contenders.filter((_, index) =>
    byHitter.some((samples) => at(samples, index).values.length >= least),
  );
  const cells = byHitter.flatMap((samples, block) =>
    samples.flatMap(({ contender, values }): Cell[] =>
      values.length >= least ? [{ block, treatment: hit.indexOf(contender), value: meanOf(values) }] : [],
    ),
  );
  const cellsLeftOut = sizes.filter((size) => size < least).length;
  try {
    const { test } = additiveModel(cells, level);
    const gaps = blockGaps(cells, level)
      .filter(({ direct }) => direct >= fewestHittersAsUnit)
      .map((gap): Gap => {
        const { estimate, standardError, df, statistic, p, ci } = gap;
        return {
          a: at(hit, gap.a),
          b: at(hit, gap.b),
          method: 'hitter-model',
          estimate,
          standardError,
          df,
          statistic,
          p,
          ci,
          level,
        };
      });
    return { gaps, omnibus: { method: 'hitter-model', ...test }, cellsLeftOut };
  } catch (error) {
    // A table that does not hang together, or without anything left to judge by, judges nothing.
    if (error instanceof StatisticsError) return { ...noGaps, cellsLeftOut };
    throw error;
  }
}
