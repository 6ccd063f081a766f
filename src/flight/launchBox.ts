import { at } from '../stats/at.ts';
import type { Launch } from './launch.ts';

/** The four quantities that shape a flight; the direction only turns it. */
export const shaping = ['ballSpeed', 'launchAngle', 'spinRate', 'spinAxis'] as const;

/** Middle and half-width of each of `shaping`. */
export interface LaunchBox {
  readonly middle: readonly number[];
  readonly half: readonly number[];
}

/** The box between least and greatest values, one pair for each of `shaping`. */
export function boxBetween(ends: readonly (readonly [low: number, high: number])[]): LaunchBox {
  return {
    middle: ends.map(([low, high]) => (low + high) / 2),
    // Of what never changes any width will do.
    half: ends.map(([low, high]) => (high > low ? (high - low) / 2 : 1)),
  };
}

/** A launch in the box's own coordinates, -1 to 1 inside. */
export function inBox({ middle, half }: LaunchBox, launch: Launch): readonly number[] {
  return shaping.map((key, i) => (launch[key] - at(middle, i)) / at(half, i));
}

/** The launch straight ahead at a point in the box's coordinates. */
export function outOfBox({ middle, half }: LaunchBox, point: readonly number[]): Launch {
  const [ballSpeed = 0, launchAngle = 0, spinRate = 0, spinAxis = 0] = point.map(
    (z, i) => at(middle, i) + z * at(half, i),
  );
  return { ballSpeed, launchAngle, spinRate, spinAxis, launchDirection: 0 };
}
