import type { Session } from '../intake/session.ts';
import { meanOf, moments } from '../stats/moments.ts';
import { predictionEllipse } from '../stats/predictionEllipse.ts';
import { wilsonInterval } from '../stats/proportion.ts';
import { StatisticsError } from '../stats/statisticsError.ts';
import type { LandingEllipse, LandingFindings } from './findings.ts';
import { confidence, fewestForCurve, laneM, mostCorrelation } from './thresholds.ts';

/** Where the shots of each contender landed; null without carry and side. */
export function landingOf(session: Session): LandingFindings | null {
  const { carry, side } = session.columns;
  if (carry === undefined || side === undefined) return null;
  return {
    laneM,
    byContender: session.contenders.map((id) => {
      const points = session.shots.flatMap((shot): (readonly [number, number])[] => {
        const { carry: far, side: across } = shot.values;
        const counts = shot.contender === id && shot.excluded === null;
        return counts && typeof far === 'number' && typeof across === 'number' ? [[across, far]] : [];
      });
      const within = points.filter(([across]) => Math.abs(across) <= laneM).length;
      return {
        id,
        n: points.length,
        meanSide: points.length === 0 ? null : meanOf(points.map(([across]) => across)),
        meanCarry: points.length === 0 ? null : meanOf(points.map(([, far]) => far)),
        within,
        withinShare: points.length === 0 ? null : wilsonInterval(within, points.length, confidence),
        left: points.filter(([across]) => across < 0).length,
        right: points.filter(([across]) => across > 0).length,
        nextShot: session.hitters.length === 1 ? curveOf(points, side.step, carry.step) : null,
      };
    }),
  };
}

/** Nine in ten next shots land inside; from ten shots up, none where they lie on a line. */
function curveOf(
  points: readonly (readonly [number, number])[],
  sideStep: number,
  carryStep: number,
): LandingEllipse | null {
  if (points.length < fewestForCurve) return null;
  try {
    const { centre, halfAxes, angle, correlation } = predictionEllipse(points, 0.9);
    const floored =
      isFloored(
        points.map(([across]) => across),
        sideStep,
      ) ||
      isFloored(
        points.map(([, far]) => far),
        carryStep,
      );
    return Math.abs(correlation) > mostCorrelation || floored ? null : { centre, halfAxes, angle };
  } catch (error) {
    if (error instanceof StatisticsError) return null;
    throw error;
  }
}

/** Whether readings vary by less than their rounding alone makes them. */
function isFloored(values: readonly number[], step: number): boolean {
  return moments(values).variance < (step * step) / 12;
}
