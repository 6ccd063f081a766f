import { run } from './bounce.ts';
import type { FlightModel } from './flightModel.ts';
import type { Flight } from './trajectory.ts';

/** Distance along the target line at which a modelled ball rests, metres: carry and run, an estimate. */
export function totalOf(flight: Flight, model: FlightModel): number {
  const { x, y, z } = flight.landingVelocity;
  const level = Math.hypot(x, z);
  if (level === 0) return flight.carry;
  const impact = { speed: Math.hypot(x, y, z), angle: flight.descentAngle, backspin: flight.landingSpin };
  return flight.carry + (run(impact, model) * x) / level;
}
