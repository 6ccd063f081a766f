import type { Session } from '../intake/session.ts';
import { additiveModel } from '../stats/additiveModel.ts';
import type { PairGap } from '../stats/gapInterval.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { Gap } from './gap.ts';
import type { HitOrder } from './hitOrder.ts';
import { quietly } from './quietly.ts';
import type { Sample } from './samples.ts';
import { judgedContenders } from './shotGaps.ts';
import { turnCells } from './turnCells.ts';

interface TurnFacts {
  readonly session: Session;
  readonly metric: MetricId;
  readonly samples: readonly Sample[];
  readonly order: HitOrder;
}

/**
 * The gap of a pair with the turn as the unit: additive model of round (or visit) and contender on one value each,
 * simultaneous over the contenders that are judged. Null where there are too few turns to work it out.
 */
export function turnGap(
  { a, b }: Pick<Gap, 'a' | 'b'>,
  { session, metric, samples, order }: TurnFacts,
  level: number,
): PairGap | null {
  const judged = judgedContenders(samples);
  const cells = turnCells(session, metric, order.turns, judged);
  const [first, second] = [judged.indexOf(a), judged.indexOf(b)];
  return quietly(
    () => additiveModel(cells, level).gaps.find((gap) => gap.a === first && gap.b === second) ?? null,
  );
}
