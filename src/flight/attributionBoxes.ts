import { greatestOf, leastOf } from '../stats/extremes.ts';
import { meanOf } from '../stats/moments.ts';
import type { AttributionShot } from './attributionPlan.ts';
import type { CoalitionAxes } from './coalitionAxes.ts';
import type { Launch } from './launch.ts';
import { boxBetween, shaping, type LaunchBox } from './launchBox.ts';
import { meanLaunch } from './meanLaunch.ts';

/** Each shot's launch less the mean of its own contender. */
export function residualsOf(shots: readonly AttributionShot[]): readonly Launch[] {
  const mean = meanLaunch(shots.map(({ launch }) => launch));
  return shots.map(({ launch }) => ({
    ballSpeed: launch.ballSpeed - mean.ballSpeed,
    launchAngle: launch.launchAngle - mean.launchAngle,
    launchDirection: launch.launchDirection - mean.launchDirection,
    spinRate: launch.spinRate - mean.spinRate,
    spinAxis: launch.spinAxis - mean.spinAxis,
  }));
}

/** All launches that a swap can lead to: either contender's mean with any shot's residual. Symmetric in the tilt. */
export function boxOfShots(
  a: readonly AttributionShot[],
  b: readonly AttributionShot[],
  residuals: readonly Launch[],
): LaunchBox {
  return boxBetween(
    shaping.map((key) => {
      const means = [a, b].map((shots) => meanOf(shots.map(({ launch }) => launch[key])));
      const rests = residuals.map((residual) => residual[key]);
      const low = Math.min(...means) + leastOf(rests);
      const high = Math.max(...means) + greatestOf(rests);
      const most = Math.max(Math.abs(low), Math.abs(high));
      return key === 'spinAxis' ? [-most, most] : [low, high];
    }),
  );
}

/** All mean launches that a coalition of the means or of a draw can have. */
export function boxOfMeans({ sizes, width, rows }: CoalitionAxes): LaunchBox {
  let start = 0;
  const ends = sizes.map((size): readonly [number, number] => {
    let low = Infinity;
    let high = -Infinity;
    for (let row = start; row < rows.length; row += width) {
      for (let at = row; at < row + size; at++) {
        const value = rows[at] ?? 0;
        if (value < low) low = value;
        if (value > high) high = value;
      }
    }
    start += size;
    return [low, high];
  });
  return boxBetween(ends);
}
