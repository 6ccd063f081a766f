import type { MetricId } from './metrics.ts';

/**
 * Physical limits in canonical units. Wide, our choice, not sourced: they serve only to tell readings of a file
 * apart and to refuse what cannot be; they are no statement about golf.
 */
export const limits: Readonly<Record<MetricId, readonly [low: number, high: number]>> = {
  club_speed: [5, 72],
  ball_speed: [1, 105],
  smash: [0.4, 1.6],
  launch_angle: [-30, 75],
  launch_direction: [-60, 60],
  spin_rate: [50, 16000],
  spin_axis: [-60, 60],
  back_spin: [-16000, 16000],
  side_spin: [-16000, 16000],
  attack_angle: [-60, 60],
  club_path: [-60, 60],
  face_angle: [-60, 60],
  face_to_path: [-60, 60],
  dynamic_loft: [-60, 90],
  spin_loft: [-60, 90],
  strike_across: [-0.15, 0.15],
  strike_up: [-0.15, 0.15],
  carry: [0, 400],
  total: [-20, 500],
  side: [-150, 150],
  curve: [-150, 150],
  apex: [-5, 90],
  descent_angle: [-60, 60],
  hang_time: [0, 20],
};

/** Ball speed over club speed. */
export const smashLimits: readonly [number, number] = [0.4, 1.6];

/** Longest carry in metres that a ball speed in m/s allows: the range without air, plus a margin. */
export function longestCarry(ballSpeed: number): number {
  return (1.15 * ballSpeed ** 2) / 9.80665;
}

/** How far in metres a ball may roll back from where it landed. */
export const furthestRollBack = 20;

export function isWithinLimits(value: number, metric: MetricId): boolean {
  const [low, high] = limits[metric];
  return value >= low && value <= high;
}
