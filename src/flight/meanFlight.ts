import type { FlightModel } from './flightModel.ts';
import type { Launch } from './launch.ts';
import { meanLaunch } from './meanLaunch.ts';
import { flyAlong, type Flight } from './trajectory.ts';

/** A line of points in metres: along the target line, then up (from the side) or right (from above). */
export type Polyline = readonly (readonly [along: number, across: number])[];

export interface MeanFlight {
  readonly launch: Launch;
  readonly flight: Flight;
  readonly fromSide: Polyline;
  readonly fromAbove: Polyline;
}

// Seconds between points: some 70 in a drive, smooth at any size a page prints.
const step = 0.1;

/**
 * Modelled flight of the mean launch. The mean of the shots' own carries lies about a yard below its carry, since
 * scatter costs distance.
 *
 * @throws StatisticsError `sample-too-small` without launches
 */
export function meanFlight(launches: readonly Launch[], model: FlightModel): MeanFlight {
  const launch = meanLaunch(launches);
  const { flight, path } = flyAlong(launch, { ...model, step });
  return {
    launch,
    flight,
    fromSide: path.map(({ x, y }) => [x, y]),
    fromAbove: path.map(({ x, z }) => [x, z]),
  };
}
