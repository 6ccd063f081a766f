import { at } from '../stats/at.ts';
import { equationsOfMotion, launchState, spinInRpm, stateSize, type State } from './equationsOfMotion.ts';
import type { FlightModel } from './flightModel.ts';
import { falls, hermite } from './hermite.ts';
import type { Launch } from './launch.ts';
import type { Vector } from './vector.ts';

/** Where and how a ball comes down to the height it left from. Metres, seconds, degrees. */
export interface Flight {
  /** along the target line */
  readonly carry: number;
  /** right of the target line */
  readonly side: number;
  readonly apex: number;
  readonly hangTime: number;
  /** below the level */
  readonly descentAngle: number;
  /** over the ground, m/s */
  readonly landingVelocity: Vector;
  /** rpm */
  readonly landingSpin: number;
}

interface PathPoint extends Vector {
  /** seconds after launch */
  readonly time: number;
  /** over the ground, m/s */
  readonly speed: number;
  /** rpm */
  readonly spin: number;
}

// A ball that has not come down by then has been sent into the sky by numbers that are no golf shot.
const longestFlight = 60;

/**
 * Flies a ball (see `equationsOfMotion`): Runge-Kutta of fourth order at a fixed step, landing and apex on the cubic
 * between two steps, which at 0.05 s leaves errors of about a micrometre. A ball that starts downwards lands where
 * it started.
 *
 * @throws RangeError when launch or model hold something that is not a number, or the ball does not come down in a
 * minute
 */
export function fly(launch: Launch, model: FlightModel): Flight {
  return follow(launch, model, null);
}

/** Carry and side of a ball's flight, for those who fly thousands. Errors as `fly`. */
export function comesDownAt(launch: Launch, model: FlightModel): Pick<Flight, 'carry' | 'side'> {
  const { between, share } = descent(launch, model, null);
  return { carry: coordinateWithin(between, 0, share), side: coordinateWithin(between, 2, share) };
}

/** The flight and the points it passes, launch and landing among them, one a step. */
export function flyAlong(
  launch: Launch,
  model: FlightModel,
): { readonly flight: Flight; readonly path: readonly PathPoint[] } {
  const path: PathPoint[] = [];
  const flight = follow(launch, model, (state, time) => path.push(pointAt(state, time)));
  return { flight, path };
}

function follow(launch: Launch, model: FlightModel, visit: Visit | null): Flight {
  let apex = 0;
  const { between, taken, share } = descent(launch, model, visit, (step) => (apex = apexWithin(step)));
  const landing = stateWithin(between, share);
  landing[1] = 0;
  const time = (taken + share) * model.step;
  visit?.(landing, time);
  return flightOf(landing, apex, time);
}

type Visit = (state: State, time: number) => void;

interface Descent {
  /** The step in which the ball comes down. */
  readonly between: Step;
  /** Steps before it. */
  readonly taken: number;
  /** Of that step. */
  readonly share: number;
}

/** Flies a ball until it is down; `turns` is told the step in which it stops rising. */
function descent(
  launch: Launch,
  model: FlightModel,
  visit: Visit | null,
  turns?: (step: Step) => void,
): Descent {
  requireNumbers(launch, model);
  const { step } = model;
  const { changeAt, advance } = equationsOfMotion(launch, model);
  let now = launchState(launch);
  let slope = new Float64Array(stateSize);
  let next = new Float64Array(stateSize);
  let nextSlope = new Float64Array(stateSize);
  changeAt(now, slope);
  visit?.(now, 0);
  for (let taken = 0; taken * step < longestFlight; taken++) {
    advance(now, slope, next, nextSlope);
    if ((now[4] ?? 0) > 0 && (next[4] ?? 0) <= 0) turns?.({ now, slope, next, nextSlope, step });
    if ((next[1] ?? 0) <= 0) {
      const between = { now, slope, next, nextSlope, step };
      return { between, taken, share: landingWithin(between) };
    }
    visit?.(next, (taken + 1) * step);
    [now, next] = [next, now];
    [slope, nextSlope] = [nextSlope, slope];
  }
  throw new RangeError(
    `fly: the ball has not come down after ${longestFlight} s; launch ${JSON.stringify(launch)}`,
  );
}

interface Step {
  readonly now: State;
  readonly slope: State;
  readonly next: State;
  readonly nextSlope: State;
  readonly step: number;
}

function coordinateWithin({ now, slope, next, nextSlope, step }: Step, i: number, share: number): number {
  return hermite(at(now, i), at(slope, i), at(next, i), at(nextSlope, i), step, share);
}

function stateWithin(between: Step, share: number): State {
  return Float64Array.from({ length: stateSize }, (_, i) => coordinateWithin(between, i, share));
}

function apexWithin(between: Step): number {
  const share = falls((at) => coordinateWithin(between, 4, at), 0, 1);
  return coordinateWithin(between, 1, share);
}

/** Share of the step at which the ball is back at launch height; 0 when it never rose. */
function landingWithin(between: Step): number {
  const rises = at(between.now, 1) > 0 || at(between.slope, 1) > 0;
  if (!rises) return 0;
  // Of a flight shorter than one step the height is 0 at both ends: look from where it turns.
  const start = at(between.now, 1) > 0 ? 0 : falls((at) => coordinateWithin(between, 4, at), 0, 1);
  return falls((at) => coordinateWithin(between, 1, at), start, 1);
}

function flightOf(landing: State, apex: number, hangTime: number): Flight {
  const landingVelocity = { x: at(landing, 3), y: at(landing, 4), z: at(landing, 5) };
  const level = Math.hypot(landingVelocity.x, landingVelocity.z);
  return {
    carry: at(landing, 0),
    side: at(landing, 2),
    apex,
    hangTime,
    descentAngle: (Math.atan2(-landingVelocity.y, level) * 180) / Math.PI,
    landingVelocity,
    landingSpin: spinInRpm(at(landing, 6)),
  };
}

function pointAt(state: State, time: number): PathPoint {
  const speed = Math.hypot(at(state, 3), at(state, 4), at(state, 5));
  return {
    time,
    x: at(state, 0),
    y: at(state, 1),
    z: at(state, 2),
    speed,
    spin: spinInRpm(at(state, 6)),
  };
}

function requireNumbers(launch: Launch, model: FlightModel): void {
  const { ball, air, wind, dragScale, liftScale, gravity, step } = model;
  const { ballSpeed, launchAngle, launchDirection, spinRate, spinAxis } = launch;
  // One that is not finite leaves a sum that is not: thousands of flights are checked by this line alone.
  const launched = ballSpeed + launchAngle + launchDirection + spinRate + spinAxis;
  const around = ball.mass + ball.diameter + air.density + air.viscosity + wind.x + wind.y + wind.z;
  if (Number.isFinite(launched + around + dragScale + liftScale + gravity + step) && step > 0) return;
  const numbers = [
    ...Object.entries(launch),
    ...Object.entries({ dragScale, liftScale, gravity, step }),
    ...Object.entries({ ...ball, ...air, ...wind }),
  ];
  const bad = numbers.find(([, value]) => !Number.isFinite(value));
  if (bad !== undefined) throw new RangeError(`fly: ${bad[0]} must be a finite number, got ${bad[1]}`);
  if (!(step > 0)) throw new RangeError(`fly: step must be above 0, got ${step}`);
}
