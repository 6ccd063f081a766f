import { at } from '../stats/at.ts';
import { coefficientSets } from '../flight/coefficientSets.ts';
import { flightModel } from '../flight/flightModel.ts';
import { axesAround, launchSpinGrid } from '../flight/launchSpinGrid.ts';
import { launchesOf } from '../flight/launchesOf.ts';
import type { Session } from '../intake/session.ts';
import { meanOf } from '../stats/moments.ts';
import type { LaunchWindow } from './findings.ts';
import { fewestForLaunchWindow } from './thresholds.ts';

/**
 * Modelled carry over launch angle and spin at this hitter's mean ball speed: how far each point falls short of the
 * best one, by the set of coefficients that likes it least, so that a plateau is one all sets share. Null for
 * several hitters, and where launches were not read.
 */
export function launchWindowOf(session: Session): LaunchWindow | null {
  if (session.hitters.length !== 1) return null;
  const counted = session.shots.filter(({ excluded }) => excluded === null);
  const launches = launchesOf(counted.map(({ values }) => values)).filter((launch) => launch !== null);
  if (launches.length < fewestForLaunchWindow) return null;
  const ballSpeed = meanOf(launches.map((launch) => launch.ballSpeed));
  const axes = axesAround(launches);
  const grids = coefficientSets.map((coefficients) => {
    const carries = launchSpinGrid(axes, ballSpeed, flightModel({ coefficients }));
    return { carries, best: Math.max(...carries.flat()) };
  });
  const short = axes.spinRates.map((_, spin) =>
    axes.launchAngles.map((__, launch) =>
      Number(Math.max(...grids.map(({ carries, best }) => best - at(at(carries, launch), spin))).toFixed(2)),
    ),
  );
  return { ballSpeed, sets: grids.length, ...axes, short };
}
