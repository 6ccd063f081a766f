import type { Plan } from '../intake/authored/plan.ts';
import { plannedOrder, type PlannedShot, type PlannedTurns } from '../intake/plan/plannedOrder.ts';
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
  return orderOfPlan(plan, session) !== null;
}

/**
 * The session with the rounds, or sets of visits, of the plan whose seed reproduces its order, where its file numbers
 * none: the order alone does not tell where one visit ends and the next with the same contender begins.
 */
export function withPlannedRounds(plan: Plan | null, session: Session): Session {
  if (session.shots.some(({ round }) => round !== null)) return session;
  const planned = orderOfPlan(plan, session);
  if (planned === null) return session;
  const hit = session.hitters.flatMap((hitter) => shotsOfHitter(session, hitter));
  const roundOf = new Map(hit.map((shot, place) => [shot, planned[place]?.round ?? null]));
  return {
    ...session,
    shots: session.shots.map((shot) => ({ ...shot, round: roundOf.get(shot) ?? null })),
  };
}

function orderOfPlan(plan: Plan | null, session: Session): readonly PlannedShot[] | null {
  const { seed, shotsPerContender: shotsEach } = plan ?? {};
  const [hitter] = session.hitters;
  if (seed === undefined || shotsEach === undefined || hitter === undefined || session.hitters.length > 1)
    return null;
  const hit = shotsOfHitter(session, hitter).map(({ contender }) => contender);
  for (const turns of turnsTried) {
    const planned = plannedOrder({ contenders: session.contenders, shotsEach, turns, seed });
    const isIt = planned?.every(({ contender }, place) => contender === hit[place]) ?? false;
    if (isIt && planned?.length === hit.length) return planned;
  }
  return null;
}
