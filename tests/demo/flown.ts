import { flightModel } from '../../src/flight/flightModel.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { fromCanonical, toCanonical } from '../../src/trade/units.ts';

/** A ball as it leaves the club, in the units fitters read. */
export interface ReadLaunch {
  readonly ballSpeedMph: number;
  readonly launchDeg: number;
  readonly directionDeg: number;
  readonly spinRpm: number;
  readonly axisDeg: number;
}

/** Where an invented ball comes down: invented launches, flown by our own model, so that they hang together. */
export interface Flown {
  readonly carryYd: number;
  readonly sideYd: number;
  readonly descentDeg: number;
}

const model = flightModel({ dragScale: 0.95 });

/** Flies an invented launch. */
export function flown({ ballSpeedMph, launchDeg, directionDeg, spinRpm, axisDeg }: ReadLaunch): Flown {
  const { carry, side, descentAngle } = fly(
    {
      ballSpeed: toCanonical(ballSpeedMph, 'mph'),
      launchAngle: launchDeg,
      launchDirection: directionDeg,
      spinRate: spinRpm,
      spinAxis: axisDeg,
    },
    model,
  );
  return { carryYd: fromCanonical(carry, 'yd'), sideYd: fromCanonical(side, 'yd'), descentDeg: descentAngle };
}
