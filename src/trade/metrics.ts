import { toCanonical, type Dimension, type UnitId } from './units.ts';

export type MetricId =
  | 'club_speed'
  | 'ball_speed'
  | 'smash'
  | 'launch_angle'
  | 'launch_direction'
  | 'spin_rate'
  | 'spin_axis'
  | 'back_spin'
  | 'side_spin'
  | 'attack_angle'
  | 'club_path'
  | 'face_angle'
  | 'face_to_path'
  | 'dynamic_loft'
  | 'spin_loft'
  | 'strike_across'
  | 'strike_up'
  | 'carry'
  | 'total'
  | 'side'
  | 'curve'
  | 'apex'
  | 'descent_angle'
  | 'hang_time';

export type MetricClass = 'measured' | 'derived' | 'modelled' | 'estimated';

interface Metric {
  readonly id: MetricId;
  /** The trade's name in running text, lower case. */
  readonly name: string;
  readonly dimension: Dimension;
  /** What a positive value means, where a sign carries meaning. */
  readonly positive: 'right of the target line' | 'towards the toe' | 'up' | 'down' | null;
  /** Which way customers usually want it; `neither` where it depends. */
  readonly better: 'more' | 'less' | 'neither';
  /** The smallest gap that matters unless shop or report says otherwise, canonical unit. */
  readonly matters: number;
  /** Whether a column is measured or otherwise, unless the report says so. */
  readonly usualClass: MetricClass;
  /** Swing measures describe the delivery, not the merit of a contender. */
  readonly delivery: boolean;
}

const metric = (
  id: MetricId,
  name: string,
  dimension: Dimension,
  matters: readonly [number, UnitId],
  rest: Partial<Omit<Metric, 'id' | 'name' | 'dimension' | 'matters'>> = {},
): Metric => ({
  id,
  name,
  dimension,
  matters: toCanonical(matters[0], matters[1]),
  positive: rest.positive ?? null,
  better: rest.better ?? 'neither',
  usualClass: rest.usualClass ?? 'measured',
  delivery: rest.delivery ?? false,
});

const right = 'right of the target line';

/**
 * The metrics of the trade. Gaps that matter are our judgement, from common practice (no source); a shop or a
 * report may set its own.
 */
export const metrics: Readonly<Record<MetricId, Metric>> = {
  club_speed: metric('club_speed', 'club speed', 'speed', [1, 'mph'], { delivery: true }),
  ball_speed: metric('ball_speed', 'ball speed', 'speed', [2, 'mph'], { better: 'more' }),
  smash: metric('smash', 'smash factor', 'ratio', [0.02, '1'], { better: 'more', usualClass: 'derived' }),
  launch_angle: metric('launch_angle', 'launch angle', 'angle', [1, 'deg'], { positive: 'up' }),
  launch_direction: metric('launch_direction', 'launch direction', 'angle', [1, 'deg'], { positive: right }),
  spin_rate: metric('spin_rate', 'spin rate', 'spin', [300, 'rpm']),
  spin_axis: metric('spin_axis', 'spin axis', 'angle', [3, 'deg'], { positive: right }),
  back_spin: metric('back_spin', 'back spin', 'spin', [300, 'rpm'], { usualClass: 'derived' }),
  side_spin: metric('side_spin', 'side spin', 'spin', [300, 'rpm'], {
    positive: right,
    usualClass: 'derived',
  }),
  attack_angle: metric('attack_angle', 'attack angle', 'angle', [1, 'deg'], {
    positive: 'up',
    delivery: true,
  }),
  club_path: metric('club_path', 'club path', 'angle', [1, 'deg'], { positive: right, delivery: true }),
  face_angle: metric('face_angle', 'face angle', 'angle', [0.7, 'deg'], { positive: right, delivery: true }),
  face_to_path: metric('face_to_path', 'face to path', 'angle', [1, 'deg'], {
    positive: right,
    usualClass: 'derived',
    delivery: true,
  }),
  dynamic_loft: metric('dynamic_loft', 'dynamic loft', 'angle', [1, 'deg'], { positive: 'up' }),
  spin_loft: metric('spin_loft', 'spin loft', 'angle', [1, 'deg'], { usualClass: 'derived' }),
  strike_across: metric('strike_across', 'strike point across the face', 'offset', [5, 'mm'], {
    positive: 'towards the toe',
    delivery: true,
  }),
  strike_up: metric('strike_up', 'strike point up the face', 'offset', [5, 'mm'], {
    positive: 'up',
    delivery: true,
  }),
  carry: metric('carry', 'carry', 'distance', [5, 'yd'], { better: 'more' }),
  total: metric('total', 'total distance', 'distance', [5, 'yd'], { better: 'more', usualClass: 'modelled' }),
  side: metric('side', 'side', 'distance', [5, 'yd'], { positive: right }),
  curve: metric('curve', 'curve', 'distance', [5, 'yd'], { positive: right, usualClass: 'derived' }),
  apex: metric('apex', 'apex', 'height', [10, 'ft'], { positive: 'up' }),
  descent_angle: metric('descent_angle', 'descent angle', 'angle', [3, 'deg'], { positive: 'down' }),
  hang_time: metric('hang_time', 'hang time', 'time', [0.3, 's']),
};

export const metricIds = Object.keys(metrics) as readonly MetricId[];

export function isMetricId(text: string): text is MetricId {
  return Object.hasOwn(metrics, text);
}
