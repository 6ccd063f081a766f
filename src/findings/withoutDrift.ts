import type { PairGap } from '../stats/gapInterval.ts';
import { linearTrend } from '../stats/linearTrend.ts';
import { onceEachNumber } from '../stats/onceEach.ts';
import type { Gap } from './gap.ts';
import { shotsOfHitter } from './shotsOfHitter.ts';
import type { OrderedSamples } from './orderedSamples.ts';
import { quietly } from './quietly.ts';
import { judgedContenders } from './shotGaps.ts';

/** The gap of a pair at a level with a steady drift taken out; null where that cannot be worked out. */
export type WithoutDrift = (pair: Pick<Gap, 'a' | 'b'>, level: number) => PairGap | null;

/** One golfer, rows in hit order, contenders that are judged. What pairs share is worked out once a level. */
export function withoutDrift({ session, metric, samples, order }: OrderedSamples): WithoutDrift {
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
