import type { ClubKind } from './clubKind.ts';
import type { MetricId } from './metrics.ts';
import { toCanonical, type UnitId } from './units.ts';

/** Whose shots: a good player's come closer together. */
export type PlayerBand = 'good' | 'mid';

/** Standard deviations of one golfer's shots with one club, good player and player of a middle handicap. */
type Pair = readonly [good: number, mid: number];

interface Typical {
  readonly unit: UnitId;
  /** One pair for every club, or a pair for each kind that is known. */
  readonly sd: Pair | Readonly<Partial<Record<ClubKind, Pair>>>;
}

/**
 * Spreads to plan with while a shop has no sessions of its own. Common practice, no source, from memory; those of
 * side follow from the others by a flight calculation. A metric that is not here has no value that could be told.
 */
const typical: Readonly<Partial<Record<MetricId, Typical>>> = {
  club_speed: { unit: 'mph', sd: [1, 2] },
  ball_speed: { unit: 'mph', sd: [1.5, 3] },
  smash: { unit: '1', sd: [0.02, 0.04] },
  launch_angle: { unit: 'deg', sd: [1.2, 2] },
  launch_direction: { unit: 'deg', sd: [1.5, 3] },
  spin_rate: { unit: 'rpm', sd: { driver: [250, 500], iron: [400, 700] } },
  spin_axis: { unit: 'deg', sd: [4, 8] },
  attack_angle: { unit: 'deg', sd: [1, 1.5] },
  club_path: { unit: 'deg', sd: [1.2, 2.5] },
  face_angle: { unit: 'deg', sd: [1.3, 2.5] },
  face_to_path: { unit: 'deg', sd: [1.5, 3] },
  dynamic_loft: { unit: 'deg', sd: [1.2, 2] },
  spin_loft: { unit: 'deg', sd: [1.3, 2.2] },
  strike_across: { unit: 'mm', sd: [6, 12] },
  strike_up: { unit: 'mm', sd: [6, 12] },
  carry: { unit: 'yd', sd: { driver: [6, 12], iron: [5, 8], wedge: [3, 6] } },
  side: { unit: 'yd', sd: { driver: [12, 17], iron: [7, 10] } },
  apex: { unit: 'ft', sd: [8, 15] },
  descent_angle: { unit: 'deg', sd: [2, 4] },
  hang_time: { unit: 's', sd: [0.3, 0.3] },
};

/** The trade's typical standard deviation in the canonical unit; null where there is none for this kind of club. */
export function typicalSpread(metric: MetricId, kind: ClubKind | null, band: PlayerBand): number | null {
  const entry = typical[metric];
  if (entry === undefined) return null;
  const pair = isPair(entry.sd) ? entry.sd : kind === null ? undefined : entry.sd[kind];
  return pair === undefined ? null : toCanonical(pair[band === 'good' ? 0 : 1], entry.unit);
}

/** Whether the typical spread of a metric is another one for another kind of club. */
export function dependsOnClub(metric: MetricId): boolean {
  const entry = typical[metric];
  return entry !== undefined && !isPair(entry.sd);
}

function isPair(sd: Typical['sd']): sd is Pair {
  return Array.isArray(sd);
}
