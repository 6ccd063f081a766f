import { lever } from '../../stats/lever.ts';
import { orderClass } from '../../stats/orderClass.ts';
import { seededRandom, shuffled } from '../../stats/random.ts';

/** How the contenders are to take turns. */
export type PlannedTurns =
  { readonly kind: 'rotation' } | { readonly kind: 'mini-blocks'; readonly shotsAVisit: number };

interface OrderRequest {
  /** Ids, two or more, in the order of the plan. */
  readonly contenders: readonly string[];
  readonly shotsEach: number;
  readonly turns: PlannedTurns;
  readonly seed: string;
}

/** One shot of the order, in the order of hitting. */
export interface PlannedShot {
  /** From 1. */
  readonly shot: number;
  /** The round, or the set of visits, from 1. */
  readonly round: number;
  readonly contender: string;
}

/** Fewest visits of a contender whose gap is credited to it (rule of credit). */
const fewestVisits = 3;
/** Fewest rounds that are known as a rotation. */
const fewestRounds = 3;
/** From this lever on a steady drift could make a gap in anything but a rotation (rule of credit). */
const longestLever = 0.25;
const mostDraws = 10_000;

/**
 * A random order that holds every contender once a round, or once a set of visits. Whole orders are drawn until one
 * is known afterwards for what it is: two contenders drawn A B, B A, A B would stand in runs like mini-blocks, and
 * visits that touch would melt into fewer. Null where the counts leave no such order: `orderTrouble` says why.
 */
export function plannedOrder(request: OrderRequest): readonly PlannedShot[] | null {
  const { contenders, shotsEach, turns, seed } = request;
  const length = turns.kind === 'rotation' ? 1 : turns.shotsAVisit;
  const rounds = shotsEach / length;
  if (!Number.isInteger(rounds) || rounds < (turns.kind === 'rotation' ? fewestRounds : fewestVisits))
    return null;
  const random = seededRandom(seed);
  for (let draw = 0; draw < mostDraws; draw += 1) {
    const turnsDrawn = Array.from({ length: rounds }, () => shuffled(contenders, random));
    const shots = turnsDrawn
      .flatMap((round, index) =>
        round.flatMap((contender) => Array.from({ length }, () => ({ round: index + 1, contender }))),
      )
      .map((shot, index) => ({ shot: index + 1, ...shot }));
    if (isKnownFor(turns, shots, contenders)) return shots;
  }
  return null;
}

function isKnownFor(
  turns: PlannedTurns,
  shots: readonly PlannedShot[],
  contenders: readonly string[],
): boolean {
  const sequence = shots.map(({ contender }) => contender);
  if (turns.kind === 'rotation') {
    const found = orderClass(
      sequence,
      shots.map(({ round }) => round),
    );
    return found.kind === 'rotation' && found.order === 'changed';
  }
  // Without the sheet too, by runs alone, visits enough must be seen.
  const found = orderClass(sequence);
  if (found.kind !== 'mini-blocks' || found.fewestVisits < fewestVisits) return false;
  return contenders.every((a, index) =>
    contenders.slice(index + 1).every((b) => lever(sequence, a, b) < longestLever),
  );
}

/** Which number of shots could be put in order, in words; null where this one can. */
export function orderTrouble(shotsEach: number, turns: PlannedTurns): string | null {
  if (turns.kind === 'rotation')
    return shotsEach < fewestRounds ? `${fewestRounds} shots with each or more, for a rotation` : null;
  const { shotsAVisit } = turns;
  if (shotsEach % shotsAVisit !== 0)
    return `a multiple of ${shotsAVisit}, to be hit in visits of ${shotsAVisit}`;
  return shotsEach / shotsAVisit < fewestVisits
    ? `${fewestVisits * shotsAVisit} shots with each or more: mini-blocks need ${fewestVisits} visits`
    : null;
}

/** The order in words, as `plan.order` keeps it. */
export function turnsInWords(turns: PlannedTurns): string {
  return turns.kind === 'rotation'
    ? 'random rotation'
    : `mini-blocks of ${turns.shotsAVisit} shots, visits in random order`;
}
