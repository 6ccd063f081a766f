import type { Session } from '../intake/session.ts';
import type { PairGap } from '../stats/gapInterval.ts';
import { linearTrend } from '../stats/linearTrend.ts';
import { onceEachNumber } from '../stats/onceEach.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { Gap } from './gap.ts';
import type { HitOrder } from './hitOrder.ts';
import { shotsOfHitter } from './shotsOfHitter.ts';
import { quietly } from './quietly.ts';
import type { Sample } from './samples.ts';
import { judgedContenders } from './shotGaps.ts';

interface DriftFacts {
  readonly session: Session;
  readonly metric: MetricId;
  readonly samples: readonly Sample[];
  readonly order: HitOrder;
}

/** The gap of a pair at a level with a steady drift taken out; null where that cannot be worked out. */
export type WithoutDrift = (pair: Pick<Gap, 'a' | 'b'>, level: number) => PairGap | null;

/** One golfer, rows in hit order, contenders that are judged. What pairs share is worked out once a level. */
export function withoutDrift({ session, metric, samples, order }: DriftFacts): WithoutDrift {
  const [hitter] = session.hitters;
  if (!order.rowsInHitOrder || hitter === undefined || session.hitters.length > 1) return () => null;
  const judged = judgedContenders(samples);
  const shots = shotsOfHitter(session, hitter);
  const sequence = shots.map(({ contender }) => judged.indexOf(contender));
  // A shot that does not count still takes its place in the order.
  const values = shots.map(({ contender, excluded, values: readings }) =>
    excluded === null && judged.includes(contender) ? (readings[metric] ?? null) : null,
  );
  const gapsAt = onceEachNumber((level) => quietly(() => linearTrend(sequence, values, level).gaps));
  return ({ a, b }, level) => {
    const [first, second] = [judged.indexOf(a), judged.indexOf(b)];
    return gapsAt(level)?.find((pair) => pair.a === first && pair.b === second) ?? null;
  };
}
