import { at } from '../stats/at.ts';
import type { Session, Shot } from '../intake/session.ts';
import { pairsOf } from '../stats/gapInterval.ts';
import { meanPlace } from '../stats/lever.ts';
import { onceEach } from '../stats/onceEach.ts';
import { orderClass, type OrderClass } from '../stats/orderClass.ts';
import { median } from '../stats/quantile.ts';
import type { StatedOrder } from './analysisInput.ts';
import type { OrderKind } from './findings.ts';
import { judgedGolfers } from './judgedGolfers.ts';
import { isEven } from './lever.ts';
import { numbersFall } from './numbersFall.ts';
import { shotsOfHitter } from './shotsOfHitter.ts';
import { fewestHittersAsUnit } from './thresholds.ts';

/** A stretch of the session in which every contender had its turn: shots by their place in the hit order, from 0. */
interface Turns {
  readonly kind: 'rounds' | 'visits';
  /** A round or a set of visits each; in a set of visits a contender may stand several times. */
  readonly blocks: readonly (readonly number[])[];
  /** Blocks that hold every contender. */
  readonly complete: number;
}

/** The rounds or visits of one hitter. */
export interface HitterTurns {
  readonly hitter: string;
  readonly turns: Turns;
}

/** How the contenders followed one another, and what that rests on. */
export interface HitOrder {
  readonly kind: OrderKind;
  /** Complete rounds of a rotation, else null. */
  readonly rounds: number | null;
  /** Contenders in the order they were hit, where that was one after another, and the same for every hitter. */
  readonly sequence: readonly string[] | null;
  /** Fewest visits of any contender in mini-blocks, else null. */
  readonly fewestVisits: number | null;
  /** Whether positions in the file are positions in time. */
  readonly rowsInHitOrder: boolean;
  /** Of every hitter whose shots came in rounds or visits. */
  readonly turns: readonly HitterTurns[];
}

const statedKind: Readonly<Record<StatedOrder, OrderKind>> = {
  random: 'stated-random',
  rotation: 'stated-rotation',
  'mini-blocks': 'stated-mini-blocks',
  'one-after-another': 'stated-one-after-another',
  unknown: 'unknown',
};

/** From the gravest to the least: several hitters are as exposed as the most exposed of those who decide. */
const gravity: readonly OrderKind[] = [
  'one-after-another',
  'mixed',
  'mini-blocks',
  'rotation-same-order',
  'rotation-orders-differ',
  'rotation-order-changed',
];

const nothingKnown: Omit<HitOrder, 'kind' | 'rowsInHitOrder'> = {
  rounds: null,
  sequence: null,
  fewestVisits: null,
  turns: [],
};

/**
 * The order of a session. Read from the rows, each hitter apart, unless the shop says that they are not in hit
 * order: then what the shop states counts.
 *
 * @param reproduced whether the seed of the plan gives this very order
 */
export function hitOrder(session: Session, stated: StatedOrder | null, reproduced = false): HitOrder {
  if (stated !== null) return { ...nothingKnown, kind: statedKind[stated], rowsInHitOrder: false };
  // Rows and shot numbers that tell two orders tell none.
  if (!reproduced && numbersFall(session) !== null)
    return { ...nothingKnown, kind: 'unknown', rowsInHitOrder: false };
  const deciding = decidingHitters(session);
  const perHitter = deciding.map((hitter) => orderOf(hitter, shotsOfHitter(session, hitter)));
  const [gravest] = [...perHitter].sort((x, y) => gravity.indexOf(x.kind) - gravity.indexOf(y.kind));
  if (gravest === undefined) return { ...nothingKnown, kind: 'unknown', rowsInHitOrder: true };
  const turns = perHitter.flatMap((own) => own.turns);
  if (!protectedKinds.includes(gravest.kind) && golfersEvenOut(session))
    return { ...nothingKnown, kind: 'counterbalanced', rowsInHitOrder: true, turns };
  const differ = roundsDiffer(
    session,
    deciding,
    perHitter.map(({ kind }) => kind),
  );
  const sequences = new Set(perHitter.map(({ sequence }) => sequence?.join('\n')));
  const visits = perHitter.flatMap(({ fewestVisits }) => (fewestVisits === null ? [] : [fewestVisits]));
  return {
    ...gravest,
    ...(differ ? { kind: 'rotation-orders-differ' as const } : {}),
    ...(reproduced ? { kind: 'planned-random' as const } : {}),
    sequence: sequences.size === 1 ? gravest.sequence : null,
    fewestVisits: visits.length === 0 ? null : Math.min(...visits),
    turns,
  };
}

/** Rounds of one each: what drifts is spread evenly over all contenders. */
export const protectedKinds: readonly OrderKind[] = [
  'rotation-same-order',
  'rotation-orders-differ',
  'rotation-order-changed',
];

/** Whether golfers who each hit in rounds did so in different ways, or in orders of their own. */
function roundsDiffer(session: Session, deciding: readonly string[], kinds: readonly OrderKind[]): boolean {
  if (!kinds.every((kind) => protectedKinds.includes(kind))) return false;
  if (new Set(kinds).size > 1) return true;
  const first = (hitter: string): string =>
    sequenceOf(session, hitter).slice(0, session.contenders.length).join('\n');
  return kinds.includes('rotation-same-order') && new Set(deciding.map(first)).size > 1;
}

/** Hitters whose order counts: one with under half the usual number of shots never decides how a test was hit. */
function decidingHitters(session: Session): readonly string[] {
  const { hitters } = session;
  const shots = (hitter: string): number => shotsOfHitter(session, hitter).length;
  if (hitters.length < 2) return hitters;
  const usual = median(hitters.map(shots));
  return hitters.filter((hitter) => 2 * shots(hitter) >= usual);
}

/**
 * Whether golfers are the unit and their orders even out for every pair. With fewer golfers a drift of each one's own
 * would stay in the gap and not in its interval.
 */
function golfersEvenOut(session: Session): boolean {
  const { judged } = judgedGolfers(session);
  if (judged.length < fewestHittersAsUnit) return false;
  const sequences = judged.map((hitter) => sequenceOf(session, hitter));
  return pairsOf(session.contenders.length).every(([first, second]) =>
    isEven(sequences, at(session.contenders, first), at(session.contenders, second)),
  );
}

/** Contender of each of a hitter's shots in the order they were hit. */
export function sequenceOf(session: Session, hitter: string): readonly string[] {
  return sequences(shotsOfHitter(session, hitter));
}

const sequences = onceEach((shots: readonly Shot[]) => shots.map(({ contender }) => contender));

function orderOf(hitter: string, shots: readonly Shot[]): HitOrder {
  if (shots.length === 0) return { ...nothingKnown, kind: 'unknown', rowsInHitOrder: true };
  const sequence = shots.map(({ contender }) => contender);
  const rounds = shots.map(({ round }) => round);
  const found = orderClass(sequence, rounds.every((round) => round !== null) ? rounds : undefined);
  const turns = turnsOf(found, sequence);
  return {
    kind: kindOf(found),
    rounds: found.kind === 'rotation' ? found.complete : null,
    sequence: found.kind === 'one-after-another' ? byMeanPlace(sequence) : null,
    fewestVisits: found.kind === 'mini-blocks' ? found.fewestVisits : null,
    rowsInHitOrder: true,
    turns: turns === null ? [] : [{ hitter, turns }],
  };
}

function kindOf(found: OrderClass): OrderKind {
  if (found.kind !== 'rotation') return found.kind;
  return found.order === 'changed' ? 'rotation-order-changed' : 'rotation-same-order';
}

/** Contenders by the mean place of their shots. */
function byMeanPlace(sequence: readonly string[]): readonly string[] {
  return [...new Set(sequence)].sort((x, y) => meanPlace(sequence, x) - meanPlace(sequence, y));
}

function turnsOf(found: OrderClass, sequence: readonly string[]): Turns | null {
  if (found.kind === 'rotation') return { kind: 'rounds', blocks: found.rounds, complete: found.complete };
  if (found.kind !== 'mini-blocks') return null;
  const sets = Map.groupBy(found.visits, ({ set }) => set);
  const blocks = [...sets.values()].map((visits) =>
    visits.flatMap(({ start, length }) => Array.from({ length }, (_, place) => start + place)),
  );
  const all = new Set(sequence).size;
  const complete = blocks.filter(
    (block) => new Set(block.map((place) => sequence[place])).size === all,
  ).length;
  return { kind: 'visits', blocks, complete };
}
