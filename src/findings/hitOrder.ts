import type { Session, Shot } from '../intake/session.ts';
import { meanPlace } from '../stats/lever.ts';
import { orderClass, type OrderClass } from '../stats/orderClass.ts';
import type { StatedOrder } from './analysisInput.ts';
import type { OrderKind } from './findings.ts';

/** How the contenders followed one another, and what that rests on. */
export interface HitOrder {
  readonly kind: OrderKind;
  /** Complete rounds of a rotation, else null. */
  readonly rounds: number | null;
  /** Contenders in the order they were hit, where that was one after another. */
  readonly sequence: readonly string[] | null;
  /** Fewest visits of any contender in mini-blocks, else null. */
  readonly fewestVisits: number | null;
  /** Whether positions in the file are positions in time. */
  readonly rowsInHitOrder: boolean;
}

const statedKind: Readonly<Record<StatedOrder, OrderKind>> = {
  random: 'stated-random',
  rotation: 'stated-rotation',
  'mini-blocks': 'stated-mini-blocks',
  'one-after-another': 'stated-one-after-another',
  unknown: 'unknown',
};

/** From the gravest to the least: several hitters are as exposed as the most exposed one of them. */
const gravity: readonly OrderKind[] = [
  'one-after-another',
  'mixed',
  'mini-blocks',
  'rotation-same-order',
  'rotation-order-changed',
];

/**
 * The order of a session. Read from the rows, each hitter apart, unless the shop says that they are not in hit
 * order: then what the shop states counts.
 */
export function hitOrder(session: Session, stated: StatedOrder | null): HitOrder {
  if (stated !== null) {
    return { kind: statedKind[stated], rounds: null, sequence: null, fewestVisits: null, rowsInHitOrder: false };
  }
  const perHitter = session.hitters.map((hitter) => orderOf(session.shots.filter((shot) => shot.hitter === hitter)));
  const [gravest] = [...perHitter].sort((x, y) => gravity.indexOf(x.kind) - gravity.indexOf(y.kind));
  return gravest ?? { kind: 'unknown', rounds: null, sequence: null, fewestVisits: null, rowsInHitOrder: true };
}

function orderOf(shots: readonly Shot[]): HitOrder {
  const inOrder = [...shots].sort((x, y) => x.order - y.order);
  const sequence = inOrder.map(({ contender }) => contender);
  const rounds = inOrder.map(({ round }) => round);
  const found = orderClass(sequence, rounds.every((round) => round !== null) ? rounds : undefined);
  return {
    kind: kindOf(found),
    rounds: found.kind === 'rotation' ? found.complete : null,
    sequence: found.kind === 'one-after-another' ? byMeanPlace(sequence) : null,
    fewestVisits: found.kind === 'mini-blocks' ? found.fewestVisits : null,
    rowsInHitOrder: true,
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
