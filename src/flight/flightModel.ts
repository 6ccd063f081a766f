import { standardAir, type Air } from './air.ts';
import { ruleBall, type Ball } from './ball.ts';
import type { CoefficientSet } from './coefficientSet.ts';
import { naruo2004 } from './naruo2004.ts';
import { still, type Vector } from './vector.ts';

/** All that decides a flight but the launch. */
export interface FlightModel {
  readonly coefficients: CoefficientSet;
  /** The set's drag is multiplied by this; fitted to measured carries by `calibrate`. */
  readonly dragScale: number;
  readonly liftScale: number;
  readonly ball: Ball;
  readonly air: Air;
  /** How the air moves, m/s: a head wind has x below 0. The same at every height. */
  readonly wind: Vector;
  /** m/s2 */
  readonly gravity: number;
  /** Seconds between two points of the calculation. */
  readonly step: number;
}

/** The recommended coefficients untuned in still standard air, but for what `changes` says. */
export function flightModel(changes: Partial<FlightModel> = {}): FlightModel {
  return {
    coefficients: naruo2004,
    dragScale: 1,
    liftScale: 1,
    ball: ruleBall,
    air: standardAir,
    wind: still,
    gravity: 9.80665,
    step: 0.05,
    ...changes,
  };
}
