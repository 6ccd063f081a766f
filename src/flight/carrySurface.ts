import { at } from '../stats/at.ts';
import { meanOf } from '../stats/moments.ts';
import { designPoints } from './designPoints.ts';
import type { FlightModel } from './flightModel.ts';
import type { Launch } from './launch.ts';
import { inBox, outOfBox, shaping, type LaunchBox } from './launchBox.ts';
import { compiled, polynomialFit, powersUpTo, type Polynomial } from './polynomial.ts';
import { quickStep } from './quickStep.ts';
import { comesDownAt } from './trajectory.ts';

/**
 * Where a ball lands, seen along its own launch direction, as polynomials in the box's coordinates: a stand-in for
 * the flight model that costs no flights.
 */
export interface CarrySurface {
  readonly box: LaunchBox;
  readonly along: Polynomial;
  readonly across: Polynomial;
  /** flights flown to fit and check it */
  readonly flights: number;
  /** largest error of the carry among the launches it was checked at, metres */
  readonly misfit: number;
}

const designFlights = 86;
const checkFlights = 12;
const points = designPoints(designFlights, shaping.length);

const tilt = shaping.indexOf('spinAxis');
// Straight shots bend most with launch angle and spin, hardly with ball speed: sixth degree where speed counts double.
const straight = powersUpTo(
  4,
  6,
  ([speed = 0, angle = 0, spin = 0, axis = 0]) => axis === 0 && speed <= 2 && 2 * speed + angle + spin <= 6,
);
const curved = powersUpTo(
  4,
  4,
  ([speed = 0, angle = 0, spin = 0, axis = 0]) =>
    axis > 0 && axis % 2 === 0 && 1.5 * speed + angle + spin + axis <= 4,
);
const odd = powersUpTo(4, 4, ([, , , axis = 0]) => axis % 2 === 1);
const fitAll = polynomialFit(powersUpTo(4, 4), points);
// Mirrored spin gives the mirrored flight unless the wind comes from the side.
const fitMirrored = {
  along: polynomialFit([...straight, ...curved], points),
  across: polynomialFit(odd, points),
};

/**
 * Fits the surface to flights that fill the box and checks it at the launches that lie farthest out. Under 100
 * flights. Wind is taken as it blows for the mean direction. The box is made symmetric in the tilt by the caller
 * (`low` = -`high`) so that the mirror can serve.
 */
export function carrySurface(launches: readonly Launch[], box: LaunchBox, model: FlightModel): CarrySurface {
  const quick = { ...model, step: quickStep };
  const ahead = turnedWith(quick, meanOf(launches.map(({ launchDirection }) => launchDirection)));
  const flights = points.map((point) => comesDownAt(outOfBox(box, point), ahead));
  const mirrored = ahead.wind.z === 0 && at(box.middle, tilt) === 0;
  const fit = mirrored ? fitMirrored : { along: fitAll, across: fitAll };
  const surface = {
    box,
    along: fit.along(flights.map(({ carry }) => carry)),
    across: fit.across(flights.map(({ side }) => side)),
  };
  const farthest = launches
    .map((launch) => ({ launch, out: Math.hypot(...inBox(box, launch)) }))
    .toSorted((a, b) => b.out - a.out)
    .slice(0, checkFlights);
  const carryOf = surfaceCarry(surface);
  const errors = farthest.map(({ launch }) => Math.abs(carryOf(launch) - comesDownAt(launch, quick).carry));
  return { ...surface, flights: points.length + farthest.length, misfit: Math.max(0, ...errors) };
}

/** Carry of a launch by the surface, metres. */
function surfaceCarry(surface: Pick<CarrySurface, 'box' | 'along' | 'across'>): (launch: Launch) => number {
  const along = compiled(surface.along);
  const across = compiled(surface.across);
  return (launch) => {
    const point = Float64Array.from(inBox(surface.box, launch));
    const turn = (launch.launchDirection * Math.PI) / 180;
    return along(point) * Math.cos(turn) - across(point) * Math.sin(turn);
  };
}

/** The model with its wind as a ball launched in `direction` meets it. */
function turnedWith(model: FlightModel, direction: number): FlightModel {
  const { x, y, z } = model.wind;
  if (x === 0 && z === 0) return model;
  const turn = (direction * Math.PI) / 180;
  return {
    ...model,
    wind: { x: x * Math.cos(turn) + z * Math.sin(turn), y, z: z * Math.cos(turn) - x * Math.sin(turn) },
  };
}
