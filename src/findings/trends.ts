import type { Session } from '../intake/session.ts';
import { linearTrend } from '../stats/linearTrend.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { MetricFindings } from './findings.ts';
import type { HitOrder } from './hitOrder.ts';
import { shotsOfHitter } from './shotsOfHitter.ts';
import { quietly } from './quietly.ts';
import { confidence } from './thresholds.ts';

/**
 * A straight line through the counted shots of each contender, over their places among all shots: how readings moved
 * while one and the same thing was hit. One golfer, rows in hit order; a contender whose shots bear no line is left out.
 */
export function trendsOf(session: Session, metric: MetricId, order: HitOrder): MetricFindings['trends'] {
  const [hitter] = session.hitters;
  if (hitter === undefined || session.hitters.length > 1 || !order.rowsInHitOrder) return [];
  const shots = shotsOfHitter(session, hitter);
  const together = shots.map(() => 0);
  return session.contenders.flatMap((id) => {
    const values = shots.map(({ contender, excluded, values: readings }) =>
      contender === id && excluded === null ? (readings[metric] ?? null) : null,
    );
    const line = quietly(() => linearTrend(together, values, confidence).slope);
    return line === null ? [] : [{ id, slope: line.estimate, ci: line.ci }];
  });
}
