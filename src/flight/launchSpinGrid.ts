import { greatestOf, leastOf } from '../stats/extremes.ts';
import { once } from '../stats/onceEach.ts';
import { toCanonical } from '../trade/units.ts';
import type { FlightModel } from './flightModel.ts';
import type { Launch } from './launch.ts';
import { quickStep } from './quickStep.ts';
import { totalOf } from './total.ts';
import { comesDownAt, fly } from './trajectory.ts';

/** Ascending, degrees and rpm. */
interface GridAxes {
  readonly launchAngles: readonly number[];
  readonly spinRates: readonly number[];
}

/** The cell of the greatest distance; `atEdge` when it may lie outside the grid. */
interface GridTop {
  readonly launchAngle: number;
  readonly spinRate: number;
  /** metres */
  readonly distance: number;
  readonly atEdge: boolean;
}

/** Metres by [launch angle][spin], with the plateau within 3 yards of the greatest. */
interface GridValues {
  readonly metres: readonly (readonly number[])[];
  readonly plateau: readonly (readonly boolean[])[];
  readonly top: GridTop;
}

/** Modelled distances of straight shots at one ball speed by one coefficient set. Total is an estimate. */
interface LaunchSpinGrid extends GridAxes {
  readonly set: string;
  readonly ballSpeed: number;
  readonly carry: GridValues;
  /** Flown when asked for. */
  readonly total: () => GridValues;
}

/** How far below the greatest distance the plateau reaches, metres: less than any gap that matters. */
export const plateauDepth = toCanonical(3, 'yd');

const mostCells = 24;

export function launchSpinGrid(axes: GridAxes, ballSpeed: number, model: FlightModel): LaunchSpinGrid {
  const quick = { ...model, step: quickStep };
  const metres = (distance: (launch: Launch) => number): GridValues =>
    gridValues(
      axes,
      axes.launchAngles.map((launchAngle) =>
        axes.spinRates.map((spinRate) =>
          distance({ ballSpeed, launchAngle, spinRate, launchDirection: 0, spinAxis: 0 }),
        ),
      ),
    );
  return {
    ...axes,
    set: model.coefficients.id,
    ballSpeed,
    carry: metres((launch) => comesDownAt(launch, quick).carry),
    total: once(() => metres((launch) => totalOf(fly(launch, quick), quick))),
  };
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

function gridValues(
  { launchAngles, spinRates }: GridAxes,
  metres: readonly (readonly number[])[],
): GridValues {
  const distance = Math.max(...metres.flat());
  const row = metres.findIndex((values) => values.includes(distance));
  const column = metres[row]?.indexOf(distance) ?? 0;
  const edge = (at: number, size: number): boolean => at === 0 || at === size - 1;
  return {
    metres,
    plateau: metres.map((values) => values.map((value) => value >= distance - plateauDepth)),
    top: {
      launchAngle: launchAngles[row] ?? 0,
      spinRate: spinRates[column] ?? 0,
      distance,
      atEdge: edge(row, launchAngles.length) || edge(column, spinRates.length),
    },
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
