import type { ClubKind } from './clubKind.ts';
import { toCanonical, type Dimension, type UnitId } from './units.ts';

export type MetricClass = 'measured' | 'derived' | 'modelled' | 'estimated';

/** Standard deviations of one golfer's shots with one club, good player and player of a middle handicap. */
export type TypicalPair = readonly [good: number, mid: number];

interface Metric {
  readonly id: MetricId;
  /** The trade's name in running text, lower case. */
  readonly name: string;
  readonly dimension: Dimension;
  /** The smallest gap that matters unless shop or report says otherwise, canonical unit. */
  readonly matters: number;
  /** The unit in which the trade speaks of gaps. */
  readonly unit: UnitId;
  /** Physical limits, canonical unit: they tell readings of a file apart and refuse what cannot be. */
  readonly limits: readonly [low: number, high: number];
  /**
   * The trade's words, as whole headings without their unit. Casing, spaces, hyphens and underscores do not matter. A
   * word that stands under two metrics is ambiguous and is refused, naming both.
   */
  readonly headings: readonly string[];
  /** What a positive value means, where a sign carries meaning. */
  readonly positive: 'right of the target line' | 'towards the toe' | 'up' | 'down' | null;
  /** Which way customers usually want it; `neither` where it depends. */
  readonly better: 'more' | 'less' | 'neither';
  /** Whether a column is measured or otherwise, unless the report says so. */
  readonly usualClass: MetricClass;
  /** Swing measures describe the delivery, not the merit of a contender. */
  readonly delivery: boolean;
  /**
   * Spread to plan with while a shop has no sessions of its own, in `unit`: one pair for every club, or a pair for each
   * kind that is known. Null where no value could be told.
   */
  readonly spread: TypicalPair | Readonly<Partial<Record<ClubKind, TypicalPair>>> | null;
}

type Row = Omit<Metric, 'id'>;
type Usual = 'positive' | 'better' | 'usualClass' | 'delivery' | 'spread';
type Said = Pick<Metric, 'limits'> & Partial<Pick<Metric, Usual>> & { readonly headings: string };

/** A row of the table; headings with a comma between them. */
const metric = (
  name: string,
  dimension: Dimension,
  [matters, unit]: readonly [number, UnitId],
  { headings, ...rest }: Said,
): Row => ({
  name,
  dimension,
  matters: toCanonical(matters, unit),
  unit,
  positive: null,
  better: 'neither',
  usualClass: 'measured',
  delivery: false,
  spread: null,
  headings: headings.split(/,\s+/),
  ...rest,
});

const right = 'right of the target line';

/**
 * The metrics of the trade. Common practice, no source: headings, spreads (from memory; those of side follow from the
 * others by a flight calculation), gaps that matter, and limits, which are wide and no statement about golf. A shop or a
 * report may set its own gaps.
 */
const table = {
  club_speed: metric('club speed', 'speed', [1, 'mph'], {
    limits: [5, 72],
    delivery: true,
    spread: [1, 2],
    headings: `club speed, club head speed, head speed, swing speed, club velocity, club head velocity,
      club spd, chs, speed, velocity`,
  }),
  ball_speed: metric('ball speed', 'speed', [2, 'mph'], {
    limits: [1, 105],
    better: 'more',
    spread: [1.5, 3],
    headings: `ball speed, ball velocity, ball spd, initial ball speed, initial ball velocity, initial speed,
      launch speed, speed, velocity`,
  }),
  smash: metric('smash factor', 'ratio', [0.02, '1'], {
    limits: [0.4, 1.6],
    better: 'more',
    usualClass: 'derived',
    spread: [0.02, 0.04],
    headings: 'smash, smash factor, smash ratio',
  }),
  launch_angle: metric('launch angle', 'angle', [1, 'deg'], {
    limits: [-30, 75],
    positive: 'up',
    spread: [1.2, 2],
    headings: `launch angle, launch, vertical launch, vertical launch angle, launch angle vertical,
      launch vertical, vla, angle`,
  }),
  launch_direction: metric('launch direction', 'angle', [1, 'deg'], {
    limits: [-60, 60],
    positive: right,
    spread: [1.5, 3],
    headings: `launch direction, direction, start direction, starting direction, start line, horizontal launch,
      horizontal launch angle, launch angle horizontal, launch horizontal, launch azimuth, azimuth,
      hla`,
  }),
  spin_rate: metric('spin rate', 'spin', [300, 'rpm'], {
    limits: [50, 16000],
    spread: { driver: [250, 500], iron: [400, 700] },
    headings: 'spin rate, spin, total spin, total spin rate, ball spin, ball spin rate, spin total',
  }),
  spin_axis: metric('spin axis', 'angle', [3, 'deg'], {
    limits: [-60, 60],
    positive: right,
    spread: [4, 8],
    headings: 'spin axis, axis, spin axis tilt, axis tilt, spin tilt, tilt axis, spin tilt axis',
  }),
  back_spin: metric('back spin', 'spin', [300, 'rpm'], {
    limits: [-16000, 16000],
    usualClass: 'derived',
    headings: 'back spin, back spin rate, spin back',
  }),
  side_spin: metric('side spin', 'spin', [300, 'rpm'], {
    limits: [-16000, 16000],
    positive: right,
    usualClass: 'derived',
    headings: 'side spin, side spin rate, spin side',
  }),
  attack_angle: metric('attack angle', 'angle', [1, 'deg'], {
    limits: [-60, 60],
    positive: 'up',
    delivery: true,
    spread: [1, 1.5],
    headings: 'attack angle, angle of attack, attack, aoa, angle',
  }),
  club_path: metric('club path', 'angle', [1, 'deg'], {
    limits: [-60, 60],
    positive: right,
    delivery: true,
    spread: [1.2, 2.5],
    headings: 'club path, path, swing path, club head path, club path angle, path angle',
  }),
  face_angle: metric('face angle', 'angle', [0.7, 'deg'], {
    limits: [-60, 60],
    positive: right,
    delivery: true,
    spread: [1.3, 2.5],
    headings: `face angle, face, club face, club face angle, face to target, face angle to target,
      club face to target`,
  }),
  face_to_path: metric('face to path', 'angle', [1, 'deg'], {
    limits: [-60, 60],
    positive: right,
    usualClass: 'derived',
    delivery: true,
    spread: [1.5, 3],
    headings: 'face to path, face to path angle, face angle to path, club face to path, ftp',
  }),
  dynamic_loft: metric('dynamic loft', 'angle', [1, 'deg'], {
    limits: [-60, 90],
    positive: 'up',
    spread: [1.2, 2],
    headings: 'dynamic loft, delivered loft, loft at impact, impact loft, dyn loft',
  }),
  spin_loft: metric('spin loft', 'angle', [1, 'deg'], {
    limits: [-60, 90],
    usualClass: 'derived',
    spread: [1.3, 2.2],
    headings: 'spin loft, spin loft angle',
  }),
  strike_across: metric('strike point across the face', 'offset', [5, 'mm'], {
    limits: [-0.15, 0.15],
    positive: 'towards the toe',
    delivery: true,
    spread: [6, 12],
    headings: `strike across, strike horizontal, horizontal strike, impact horizontal, horizontal impact,
      strike point across, strike point horizontal, impact point horizontal, horizontal face impact,
      face impact horizontal, impact offset horizontal`,
  }),
  strike_up: metric('strike point up the face', 'offset', [5, 'mm'], {
    limits: [-0.15, 0.15],
    positive: 'up',
    delivery: true,
    spread: [6, 12],
    headings: `strike up, strike vertical, vertical strike, impact vertical, vertical impact, strike point up,
      strike point vertical, impact point vertical, vertical face impact, face impact vertical,
      impact offset vertical, impact height, strike height`,
  }),
  carry: metric('carry', 'distance', [5, 'yd'], {
    limits: [0, 400],
    better: 'more',
    spread: { driver: [6, 12], iron: [5, 8], wedge: [3, 6] },
    headings: `carry, carry distance, carry dist, carry length, distance carry, flight distance, distance,
      length`,
  }),
  total: metric('total distance', 'distance', [5, 'yd'], {
    limits: [-20, 500],
    better: 'more',
    usualClass: 'modelled',
    headings: 'total, total distance, total dist, total length, distance total, distance, length',
  }),
  side: metric('side', 'distance', [5, 'yd'], {
    limits: [-150, 150],
    positive: right,
    spread: { driver: [12, 17], iron: [7, 10] },
    headings: `side, side distance, side carry, carry side, side deviation, side offset, lateral,
      lateral distance, lateral deviation, offline, offline distance, distance offline, carry offline,
      offline carry, deviation`,
  }),
  curve: metric('curve', 'distance', [5, 'yd'], {
    limits: [-150, 150],
    positive: right,
    usualClass: 'derived',
    headings: 'curve, curvature, curve distance, shot curve',
  }),
  apex: metric('apex', 'height', [10, 'ft'], {
    limits: [-5, 90],
    positive: 'up',
    spread: [8, 15],
    headings: `apex, apex height, height, max height, maximum height, peak height, peak, height max`,
  }),
  descent_angle: metric('descent angle', 'angle', [3, 'deg'], {
    limits: [-60, 60],
    positive: 'down',
    spread: [2, 4],
    headings: `descent angle, angle of descent, descent, landing angle, land angle, angle of landing,
      angle of fall`,
  }),
  hang_time: metric('hang time', 'time', [0.3, 's'], {
    limits: [0, 20],
    spread: [0.3, 0.3],
    headings: 'hang time, flight time, time of flight, air time, time in air, carry time',
  }),
};

export type MetricId = keyof typeof table;

export const metricIds = Object.keys(table) as readonly MetricId[];

export const metrics = Object.fromEntries(
  metricIds.map((id): [MetricId, Metric] => [id, { id, ...table[id] }]),
) as Readonly<Record<MetricId, Metric>>;

export function isMetricId(text: string): text is MetricId {
  return Object.hasOwn(metrics, text);
}
