import { meanOf } from '../stats/moments.ts';
import type { FlightModel } from './flightModel.ts';
import type { FlownShot } from './flownShot.ts';
import { evenlySpread } from '../stats/evenlySpread.ts';
import { quickStep } from './quickStep.ts';
import { comesDownAt } from './trajectory.ts';

/** One drag factor that makes the mean modelled carry the mean carry read. */
export type Calibration =
  /** `usual`: within the factors that ordinary balls and air bring about; also where nobody has judged those */
  | Fitted<'usual'>
  /** outside them: conditions or data are unusual, and the model is not to be leaned on */
  | Fitted<'unusual'>
  | { readonly state: 'not-possible'; readonly why: 'no-shots' | 'carry-out-of-reach' };

interface Fitted<State extends string> {
  readonly state: State;
  /** Takes up unknown weather as well as the ball: no property of either. */
  readonly dragScale: number;
  /** shots it was fitted to */
  readonly n: number;
  /** root mean square of carry read minus modelled, metres */
  readonly rms: number;
}

const reach = [0.3, 3] as const;
const closeEnough = 1e-5;
/** From so many on, one shot more moves the factor by less than anything printed. */
const mostFlown = 2000;

/**
 * Fits the drag factor to shots by the secant rule on the mean error; what `model` says of drag is the start. Of more than
 * 2,000 shots, 2,000 evenly spread ones are flown.
 */
export function calibrate(shots: readonly FlownShot[], model: FlightModel): Calibration {
  if (shots.length === 0) return { state: 'not-possible', why: 'no-shots' };
  const flown = evenlySpread(shots, mostFlown);
  const errors = (dragScale: number): readonly number[] =>
    flown.map(
      ({ launch, carry }) => carry - comesDownAt(launch, { ...model, dragScale, step: quickStep }).carry,
    );
  let before = { dragScale: model.dragScale, error: meanOf(errors(model.dragScale)) };
  // More drag where the ball was modelled too far. About 2 % of drag are 1 % of carry.
  let dragScale = before.dragScale * (before.error < 0 ? 1.05 : 0.95);
  for (let round = 0; round < 30; round++) {
    if (!(dragScale >= reach[0] && dragScale <= reach[1])) break;
    const rests = errors(dragScale);
    const error = meanOf(rests);
    if (Math.abs(error) < closeEnough) return fitted(dragScale, rests, model);
    const next = dragScale - (error * (dragScale - before.dragScale)) / (error - before.error);
    before = { dragScale, error };
    dragScale = next;
  }
  return { state: 'not-possible', why: 'carry-out-of-reach' };
}

function fitted(dragScale: number, rests: readonly number[], model: FlightModel): Calibration {
  const usual = model.coefficients.usualDragScale;
  const inside = usual === null || (dragScale >= usual[0] && dragScale <= usual[1]);
  const rms = Math.sqrt(meanOf(rests.map((rest) => rest * rest)));
  return { state: inside ? 'usual' : 'unusual', dragScale, n: rests.length, rms };
}
