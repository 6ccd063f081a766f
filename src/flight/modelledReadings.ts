import type { MetricId } from '../trade/metrics.ts';
import type { FlightModel } from './flightModel.ts';
import type { Launch } from './launch.ts';
import { totalOf } from './total.ts';
import { fly } from './trajectory.ts';

const modelledMetrics = [
  'carry',
  'total',
  'side',
  'curve',
  'apex',
  'descent_angle',
  'hang_time',
] as const satisfies readonly MetricId[];

/**
 * What a flight gives where it was not read, in canonical units. Modelled: to be labelled as such wherever it is
 * printed or drawn, total an estimate on top. How far to trust it: `leastModelledGap`.
 */
export function modelledReadings(
  launch: Launch,
  model: FlightModel,
): Readonly<Record<(typeof modelledMetrics)[number], number>> {
  const flight = fly(launch, model);
  const straight = flight.carry * Math.tan((launch.launchDirection * Math.PI) / 180);
  return {
    carry: flight.carry,
    total: totalOf(flight, model),
    side: flight.side,
    curve: flight.side - straight,
    apex: flight.apex,
    descent_angle: flight.descentAngle,
    hang_time: flight.hangTime,
  };
}
