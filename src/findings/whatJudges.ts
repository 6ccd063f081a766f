import { fewestRoundsJudged, type JudgedBy } from '../stats/judgedBy.ts';
import type { HitOrder } from './hitOrder.ts';
import type { Sample } from './samples.ts';

/** Whether shots came in visits, so that a gap must show on visits too. */
export function isInVisits({ kind, fewestVisits }: HitOrder): boolean {
  return kind === 'mini-blocks' || (kind === 'planned-random' && fewestVisits !== null);
}

/** By what the gaps of one golfer are judged in an order. */
export function whatJudges(order: HitOrder, paired: boolean, samples: readonly Sample[]): JudgedBy {
  if (paired) return { kind: 'rounds', pairedFrom: fewestRoundsJudged };
  const { fewestVisits } = order;
  if (!isInVisits(order) || fewestVisits === null) return { kind: 'shots' };
  const fewest = Math.min(...samples.map(({ values }) => values.length));
  return { kind: 'visits', shotsAVisit: Math.max(1, Math.round(fewest / fewestVisits)) };
}
