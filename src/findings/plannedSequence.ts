import type { Plan } from '../intake/authored/plan.ts';
import { plannedOrder, type PlannedTurns } from '../intake/plan/plannedOrder.ts';
import type { Session } from '../intake/session.ts';
import { shotsOfHitter } from './shotsOfHitter.ts';

const turnsTried: readonly PlannedTurns[] = [
  { kind: 'rotation' },
  { kind: 'mini-blocks', shotsAVisit: 2 },
  { kind: 'mini-blocks', shotsAVisit: 3 },
];

/**
 * Whether the seed of the plan reproduces the order of the shots, shot by shot: only then is the order known to be
 * random. One hitter, rows in hit order.
 */
export function reproducesPlan(plan: Plan | null, session: Session): boolean {
  const { seed, shotsPerContender: shotsEach } = plan ?? {};
  const [hitter] = session.hitters;
  if (seed === undefined || shotsEach === undefined || hitter === undefined || session.hitters.length > 1)
    return false;
  const hit = shotsOfHitter(session, hitter).map(({ contender }) => contender);
  return turnsTried.some((turns) => {
    const planned = plannedOrder({ contenders: session.contenders, shotsEach, turns, seed });
    return (
      planned !== null &&
      planned.length === hit.length &&
      planned.every(({ contender }, place) => contender === hit[place])
    );
  });
}
