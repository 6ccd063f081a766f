import type { Drift } from './drift.ts';
import type { Credit, OpenCause } from './findings.ts';
import type { HitOrder } from './hitOrder.ts';
import { placesApart } from './lever.ts';
import { fewestVisits, leverTooLong } from './thresholds.ts';

export interface CreditRuling {
  readonly credit: Credit;
  readonly because: OpenCause | null;
}

interface CreditFacts {
  readonly a: string;
  readonly b: string;
  /** SI. */
  readonly matters: number;
  readonly order: HitOrder;
  /** Of the metric, a hitter each. */
  readonly drifts: readonly Drift[];
  /** Contender of each shot of each hitter, in hit order. */
  readonly sequences: readonly (readonly string[])[];
}

/**
 * Whether a gap may be credited to the contender, or its cause stays open because of the order it was hit in.
 * The thresholds are our own rules, found by simulating equal contenders under drift and shot-to-shot correlation.
 */
export function creditOf(facts: CreditFacts): CreditRuling {
  const because = openCause(facts);
  return { credit: because === null ? 'contender' : 'open', because };
}

function openCause({ a, b, matters, order, drifts, sequences }: CreditFacts): OpenCause | null {
  if (order.kind === 'one-after-another' || order.kind === 'stated-one-after-another')
    return 'one-after-another';
  if (order.kind === 'unknown') return 'order-unknown';
  if (order.kind === 'stated-mini-blocks') return 'few-visits';
  if (order.fewestVisits !== null && order.fewestVisits < fewestVisits) return 'few-visits';
  if (!order.rowsInHitOrder) return null;
  const protectedOrder =
    order.kind === 'rotation-same-order' ||
    order.kind === 'rotation-order-changed' ||
    order.kind === 'planned-random';
  const longLever = sequences.some((sequence) => {
    const apart = placesApart(sequence, a, b);
    return apart !== null && Math.abs(apart) / Math.max(1, sequence.length - 1) >= leverTooLong;
  });
  if (longLever && !protectedOrder) return 'lever';
  const drifted = drifts.some((drift) => movesGap(drift, a, b, matters));
  return drifted ? 'drift' : null;
}

/** Whether a drift that is surely there moves the gap by half of what matters or more. */
function movesGap({ sequence, slope, ci }: Drift, a: string, b: string, matters: number): boolean {
  const surelyThere = ci[0] > 0 || ci[1] < 0;
  const apart = placesApart(sequence, a, b);
  return apart !== null && surelyThere && Math.abs(slope * apart) >= matters / 2;
}
