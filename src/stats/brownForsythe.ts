import { at } from './at.ts';
import { classicAnova } from './classicAnova.ts';
import { pairsOf } from './gapInterval.ts';
import { holm } from './holm.ts';
import { moments } from './moments.ts';
import { median } from './quantile.ts';
import type { FTest } from './welchAnova.ts';

/**
 * Are all spreads equal: analysis of variance of the distances from each group's median (Brown & Forsythe 1974,
 * JASA 69; Levene's test on medians). Robust against tails that are not normal.
 *
 * @throws StatisticsError as `classicAnova`
 */
export function brownForsythe(groups: readonly (readonly number[])[]): FTest {
  const { statistic, df, p } = classicAnova(groups.map(distances));
  return { statistic, df, p };
}

/** Two groups' spreads compared. `ratio` is sd of a / sd of b; `p` is Holm's over all pairs, `alone` without. */
interface SpreadPair extends FTest {
  readonly a: number;
  readonly b: number;
  readonly ratio: number;
  /** mean distance from the median, a minus b, in the values' unit: below 0 says that a is tighter */
  readonly distanceGap: number;
  readonly alone: number;
}

/** Brown-Forsythe of every pair a < b, p values adjusted by Holm. Two values a group at least. */
export function brownForsythePairs(groups: readonly (readonly number[])[]): readonly SpreadPair[] {
  const summaries = groups.map((group) => moments(group));
  const spreads = groups.map(distances);
  const meanDistance = spreads.map((group) => moments(group).mean);
  const tests = pairsOf(groups.length).map(([a, b]) => {
    const { statistic, df, p } = classicAnova([at(spreads, a), at(spreads, b)]);
    const ratio = Math.sqrt(at(summaries, a).variance / at(summaries, b).variance);
    return {
      a,
      b,
      statistic,
      df,
      ratio,
      distanceGap: at(meanDistance, a) - at(meanDistance, b),
      alone: p,
    };
  });
  const adjusted = holm(tests.map(({ alone }) => alone));
  return tests.map((test, i) => ({ ...test, p: at(adjusted, i) }));
}

function distances(group: readonly number[]): readonly number[] {
  const middle = median(group);
  return group.map((value) => Math.abs(value - middle));
}
