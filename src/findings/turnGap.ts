import { additiveModel, type Cell } from '../stats/additiveModel.ts';
import { pairDifferences } from '../stats/blockGaps.ts';
import type { PairGap } from '../stats/gapInterval.ts';
import { onceEachNumber } from '../stats/onceEach.ts';
import { StatisticsError } from '../stats/statisticsError.ts';
import type { Interval } from './findings.ts';
import type { Gap } from './gap.ts';
import type { OrderedSamples } from './orderedSamples.ts';
import { judgedContenders } from './shotGaps.ts';
import { turnCells } from './turnCells.ts';

interface TurnGap {
  readonly estimate: number;
  readonly ci: Interval;
  /** Of what turns and contenders leave unexplained. */
  readonly df: number;
}

/** The gap of a pair at a level. */
export type TurnGaps = (pair: Pick<Gap, 'a' | 'b'>, level: number) => TurnGap | null;

/**
 * The gaps with the turn as the unit: additive model of round (or visit) and contender on one value each, simultaneous
 * over the contenders that are judged. Null where there are too few turns to work it out. Worked out once for all pairs
 * of a level.
 */
export function turnGaps({ session, metric, samples, order }: OrderedSamples): TurnGaps {
  const judged = judgedContenders(samples);
  const cells = turnCells(session, metric, order.turns, judged);
  const gapsAt = onceEachNumber((level): readonly PairGap[] | 'exact' | 'impossible' => {
    try {
      return additiveModel(cells, level).gaps;
    } catch (error) {
      if (!(error instanceof StatisticsError)) throw error;
      // The same gap to the last digit in every turn: readings as coarse as their step do that.
      return error.kind === 'no-spread' ? 'exact' : 'impossible';
    }
  });
  return ({ a, b }, level) => {
    const [first, second] = [judged.indexOf(a), judged.indexOf(b)];
    const gaps = gapsAt(level);
    if (gaps === 'impossible') return null;
    if (gaps === 'exact') return exactGap(cells, first, second);
    return gaps.find((gap) => gap.a === first && gap.b === second) ?? null;
  };
}

function exactGap(cells: readonly Cell[], first: number, second: number): TurnGap | null {
  const differences = pairDifferences(cells, first, second);
  const [estimate] = differences;
  return estimate === undefined ? null : { estimate, ci: [estimate, estimate], df: differences.length - 1 };
}
