import type { Drift } from './drift.ts';
import type { Credit, OpenCause } from './findings.ts';
import type { Gap } from './gap.ts';
import { protectedKinds, type HitOrder } from './hitOrder.ts';
import { isEven, leverOf, placesApart } from './lever.ts';
import { fewestVisits, leverTooLong } from './thresholds.ts';
import type { WithoutDrift } from './withoutDrift.ts';

interface CreditRuling {
  readonly credit: Credit;
  readonly because: OpenCause | null;
}

interface CreditFacts {
  readonly a: string;
  readonly b: string;
  /** Null where the pair is not judged. */
  readonly gap: Pick<Gap, 'a' | 'b' | 'estimate'> | null;
  readonly level: number;
  /** SI. */
  readonly matters: number;
  readonly order: HitOrder;
  /** Whether golfers are the unit, so that what drifts differently with each of them stands in the interval. */
  readonly golfersAreUnit: boolean;
  /** Of the metric, a golfer each. */
  readonly drifts: readonly Drift[];
  /** Contender of each shot of each golfer that is judged, in hit order. */
  readonly sequences: readonly (readonly string[])[];
  readonly withoutDrift: WithoutDrift;
}

/**
 * Whether a gap may be credited to the contender, or its cause stays open because of the order it was hit in.
 * The thresholds are our own rules, found by simulating equal contenders under drift and shot-to-shot correlation.
 */
export function creditOf(facts: CreditFacts): CreditRuling {
  const because = openCause(facts);
  return { credit: because === null ? 'contender' : 'open', because };
}

function openCause(facts: CreditFacts): OpenCause | null {
  const { a, b, matters, order, drifts, sequences } = facts;
  const { kind } = order;
  if (kind === 'stated-one-after-another') return 'one-after-another';
  if (kind === 'unknown') return 'order-unknown';
  if (kind === 'stated-mini-blocks') return 'few-visits';
  const evenedOut = facts.golfersAreUnit && isEven(sequences, a, b);
  if (kind === 'one-after-another' && !evenedOut) return 'one-after-another';
  if (order.fewestVisits !== null && order.fewestVisits < fewestVisits && !evenedOut) return 'few-visits';
  if (!order.rowsInHitOrder) return null;
  const protectedOrder = protectedKinds.includes(kind) || kind === 'planned-random';
  const longLever = Math.abs(leverOf(sequences, a, b) ?? 0) >= leverTooLong;
  if (longLever && !protectedOrder && !staysWithoutDrift(facts)) return 'lever';
  return driftMoves(drifts, a, b, matters) ? 'drift' : null;
}

/** Whether a gap is still there, on the same side, with a steady drift taken out. */
function staysWithoutDrift({ gap, level, withoutDrift }: CreditFacts): boolean {
  const without = gap === null ? null : withoutDrift(gap, level);
  if (gap === null || without === null) return false;
  return gap.estimate > 0 ? without.ci[0] > 0 : without.ci[1] < 0;
}

/**
 * Whether drifts that are surely there move the gap by half of what matters or more: the mean over golfers of slope times
 * difference of mean places, errors of golfers' slopes joined at right angles.
 */
function driftMoves(drifts: readonly Drift[], a: string, b: string, matters: number): boolean {
  const moves = drifts.flatMap(({ sequence, slope, ci }) => {
    const apart = placesApart(sequence, a, b);
    return apart === null ? [] : [{ by: slope * apart, halfWidth: (Math.abs(apart) * (ci[1] - ci[0])) / 2 }];
  });
  if (moves.length === 0) return false;
  const by = moves.reduce((sum, move) => sum + move.by, 0) / moves.length;
  const halfWidth = Math.hypot(...moves.map((move) => move.halfWidth)) / moves.length;
  return Math.abs(by) > halfWidth && Math.abs(by) >= matters / 2;
}
