import type { AttributionShot } from '../../src/flight/attributionPlan.ts';
import type { FlightModel } from '../../src/flight/flightModel.ts';
import type { Launch } from '../../src/flight/launch.ts';
import { fly } from '../../src/flight/trajectory.ts';
import type { Random } from '../../src/stats/random.ts';

/** Standard deviations of a hitter's launches. */
export type Scatter = Launch;

/** Scatter within one hitter and one driver (common practice, no source). */
export const goodHitter: Scatter = {
  ballSpeed: 0.67,
  launchAngle: 1.2,
  launchDirection: 1.5,
  spinRate: 250,
  spinAxis: 4,
};
export const middlingHitter: Scatter = {
  ballSpeed: 1.34,
  launchAngle: 2,
  launchDirection: 3,
  spinRate: 500,
  spinAxis: 8,
};

export const driverLaunch: Launch = {
  ballSpeed: 70,
  launchAngle: 12.5,
  launchDirection: 0,
  spinRate: 2700,
  spinAxis: 0,
};

/** Launches scattered normally around a mean, columns independent. */
export function scattered(mean: Launch, scatter: Scatter, count: number, random: Random): readonly Launch[] {
  return Array.from({ length: count }, () => ({
    ballSpeed: mean.ballSpeed + scatter.ballSpeed * random.normal(),
    launchAngle: mean.launchAngle + scatter.launchAngle * random.normal(),
    launchDirection: mean.launchDirection + scatter.launchDirection * random.normal(),
    spinRate: mean.spinRate + scatter.spinRate * random.normal(),
    spinAxis: mean.spinAxis + scatter.spinAxis * random.normal(),
  }));
}

/** Shots whose carry is flown by `truth`, one a round, without club speed. */
export function flown(launches: readonly Launch[], truth: FlightModel): readonly AttributionShot[] {
  return launches.map((launch, round) => ({
    launch,
    clubSpeed: null,
    carry: fly(launch, truth).carry,
    round,
  }));
}
