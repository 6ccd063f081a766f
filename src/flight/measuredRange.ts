import type { FlightModel } from './flightModel.ts';
import type { Launch } from './launch.ts';
import { flyAlong } from './trajectory.ts';

/** Shares of a flight's time, 0 to 1, in which spin parameter and Reynolds number lie where the set was measured. */
export interface WithinMeasured {
  readonly spinParameter: number;
  readonly reynolds: number;
}

/** How much of a flight rests on measurements rather than on held ends. Speeds over the ground, wind left out. */
export function withinMeasured(launch: Launch, model: FlightModel): WithinMeasured {
  const { ball, air, coefficients } = model;
  const { path } = flyAlong(launch, model);
  const share = (
    value: (speed: number, spin: number) => number,
    [low, high]: readonly [number, number],
  ): number =>
    path.filter(({ speed, spin }) => value(speed, spin) >= low && value(speed, spin) <= high).length /
    path.length;
  return {
    spinParameter: share(
      (speed, rpm) => (Math.PI * ball.diameter * rpm) / 60 / speed,
      coefficients.range.spinParameter,
    ),
    reynolds: share(
      (speed) => (air.density * speed * ball.diameter) / air.viscosity,
      coefficients.range.reynolds,
    ),
  };
}
