import type { MetricId } from '../trade/metrics.ts';
import type { Launch } from './launch.ts';

/** Readings of a shot in canonical units; what was not read is null or absent. */
type Readings = Readonly<Partial<Record<MetricId, number | null>>>;

interface Spin {
  readonly rate: number;
  readonly axis: number | null;
}

/**
 * Launches of shots, null where ball speed, launch angle or spin was not read. Total spin and axis may come from back
 * and side spin. Direction and axis are taken only when every such shot has them: a shot without would otherwise
 * count as straight among others that are not.
 */
export function launchesOf(shots: readonly Readings[]): readonly (Launch | null)[] {
  const read = shots.map((shot) => {
    const spin = spinOf(shot);
    const { ball_speed: ballSpeed, launch_angle: launchAngle, launch_direction: direction } = shot;
    if (spin === null || ballSpeed == null || launchAngle == null) return null;
    return { ballSpeed, launchAngle, direction: direction ?? null, spin };
  });
  const flown = read.filter((shot) => shot !== null);
  const directed = flown.every(({ direction }) => direction !== null);
  const tilted = flown.every(({ spin }) => spin.axis !== null);
  return read.map(
    (shot) =>
      shot && {
        ballSpeed: shot.ballSpeed,
        launchAngle: shot.launchAngle,
        launchDirection: directed ? (shot.direction ?? 0) : 0,
        spinRate: shot.spin.rate,
        spinAxis: tilted ? (shot.spin.axis ?? 0) : 0,
      },
  );
}

function spinOf({
  spin_rate: rate,
  spin_axis: axis,
  back_spin: back,
  side_spin: side,
}: Readings): Spin | null {
  const both = back != null && side != null;
  const components = both
    ? { rate: Math.hypot(back, side), axis: (Math.atan2(side, back) * 180) / Math.PI }
    : null;
  if (rate == null) return components;
  return { rate, axis: axis ?? components?.axis ?? null };
}
