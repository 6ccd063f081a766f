import type { Launch } from '../../src/flight/launch.ts';
import { fromCanonical, toCanonical } from '../../src/trade/units.ts';

/** A launch in the units of the check tables: mph, degrees, rpm. */
export function launchInMph(
  mph: number,
  launchAngle: number,
  spinRate: number,
  launchDirection = 0,
  spinAxis = 0,
): Launch {
  return { ballSpeed: toCanonical(mph, 'mph'), launchAngle, launchDirection, spinRate, spinAxis };
}

export const inYards = (metres: number): number => fromCanonical(metres, 'yd');
export const inFeet = (metres: number): number => fromCanonical(metres, 'ft');
export const inMph = (metresPerSecond: number): number => fromCanonical(metresPerSecond, 'mph');
