import type { ClubKind } from './clubKind.ts';
import { metrics, type MetricId, type TypicalPair } from './metrics.ts';
import { toCanonical } from './units.ts';

/** Whose shots: a good player's come closer together. */
export type PlayerBand = 'good' | 'mid';

/** The trade's typical standard deviation in the canonical unit; null where there is none for this kind of club. */
export function typicalSpread(metric: MetricId, kind: ClubKind | null, band: PlayerBand): number | null {
  const { spread, unit } = metrics[metric];
  const pair = isPair(spread) ? spread : kind === null ? undefined : spread?.[kind];
  return pair === undefined ? null : toCanonical(pair[band === 'good' ? 0 : 1], unit);
}

/** Whether the typical spread of a metric is another one for another kind of club. */
export function dependsOnClub(metric: MetricId): boolean {
  const { spread } = metrics[metric];
  return spread !== null && !isPair(spread);
}

function isPair(spread: unknown): spread is TypicalPair {
  return Array.isArray(spread);
}
