import { meanPlaces } from '../stats/lever.ts';
import { onceEach } from '../stats/onceEach.ts';
import type { Drift } from './drift.ts';
import type { Credit } from './findings.ts';
import type { HitOrder } from './hitOrder.ts';

/** Why a gap cannot be put down to the contender. */
export type OpenCause = 'one-after-another' | 'order-unknown' | 'lever' | 'drift' | 'few-visits';

export interface CreditRuling {
  readonly credit: Credit;
  readonly because: OpenCause | null;
}

/** From this lever on, a straight drift moves too much of itself into a gap. */
const leverTooLong = 0.25;
const fewestVisits = 3;

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
    return apart !== null && apart / Math.max(1, sequence.length - 1) >= leverTooLong;
  });
  if (longLever && !protectedOrder) return 'lever';
  const drifted = drifts.some((drift) => movesGap(drift, a, b, matters));
  return drifted ? 'drift' : null;
}

/** Whether a drift that is surely there moves the gap by half of what matters or more. */
function movesGap({ sequence, slope, ci }: Drift, a: string, b: string, matters: number): boolean {
  const surelyThere = ci[0] > 0 || ci[1] < 0;
  const apart = placesApart(sequence, a, b);
  return apart !== null && surelyThere && Math.abs(slope) * apart >= matters / 2;
}

const placesOf = onceEach(meanPlaces);

/** How far apart the mean places of two contenders lie; null where the hitter did not hit both. */
function placesApart(sequence: readonly string[], a: string, b: string): number | null {
  const places = placesOf(sequence);
  const [first, second] = [places.get(a), places.get(b)];
  return first === undefined || second === undefined ? null : Math.abs(first - second);
}
