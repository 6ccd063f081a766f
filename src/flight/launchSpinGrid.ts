import { greatestOf, leastOf } from '../stats/extremes.ts';
import { toCanonical } from '../trade/units.ts';
import type { FlightModel } from './flightModel.ts';
import type { Launch } from './launch.ts';
import { quickStep } from './quickStep.ts';
import { comesDownAt } from './trajectory.ts';

/** Ascending, degrees and rpm. */
interface GridAxes {
  readonly launchAngles: readonly number[];
  readonly spinRates: readonly number[];
}

/** How far below the greatest distance the plateau reaches, metres: less than any gap that matters. */
export const plateauDepth = toCanonical(3, 'yd');

const mostCells = 24;

/** Modelled carries in metres of straight shots at one ball speed (m/s): by launch angle, then by spin. */
export function launchSpinGrid(
  { launchAngles, spinRates }: GridAxes,
  ballSpeed: number,
  model: FlightModel,
): readonly (readonly number[])[] {
  const quick = { ...model, step: quickStep };
  return launchAngles.map((launchAngle) =>
    spinRates.map(
      (spinRate) =>
        comesDownAt({ ballSpeed, launchAngle, spinRate, launchDirection: 0, spinAxis: 0 }, quick).carry,
    ),
  );
}

/** Axes that hold all launches with room around them, in round steps, at most 25 values each. */
export function axesAround(launches: readonly Launch[]): GridAxes {
  return {
    launchAngles: roundSteps(
      launches.map(({ launchAngle }) => launchAngle),
      4,
      [0.5, 1, 2, 5],
      0,
    ),
    spinRates: roundSteps(
      launches.map(({ spinRate }) => spinRate),
      1000,
      [100, 200, 500, 1000],
      500,
    ),
  };
}

function roundSteps(
  values: readonly number[],
  room: number,
  steps: readonly number[],
  least: number,
): readonly number[] {
  const low = Math.max(least, leastOf(values) - room);
  const high = greatestOf(values) + room;
  const fits = (step: number): boolean => Math.ceil(high / step) - Math.floor(low / step) <= mostCells;
  const step = steps.find(fits) ?? (high - low) / mostCells;
  const first = Math.floor(low / step);
  return Array.from({ length: Math.ceil(high / step) - first + 1 }, (_, i) => (first + i) * step);
}
