import type { Problem } from '../../problems/problem.ts';
import type { Session } from '../session.ts';
import type { Check, CheckContext } from './checks/check.ts';
import { checkEstimated } from './checks/estimatedColumns.ts';
import { checkFaceToPath } from './checks/faceToPath.ts';
import { checkFlightShape } from './checks/flightShape.ts';
import { checkFlightTime } from './checks/flightTime.ts';
import { checkImpactSpin } from './checks/impactSpin.ts';
import { checkLaunchBetween } from './checks/launchBetween.ts';
import { checkMissingReadings } from './checks/missingReadings.ts';
import { checkRoll } from './checks/roll.ts';
import { checkShotOrder } from './checks/shotOrder.ts';
import { checkSigns } from './checks/signs.ts';
import { checkSmashAverages } from './checks/smashAverages.ts';
import { checkSmashBound } from './checks/smashBound.ts';
import { checkSmashMatches } from './checks/smashMatches.ts';
import { checkSpinLoft } from './checks/spinLoft.ts';
import { checkSpinParts } from './checks/spinParts.ts';
import { checkUnitSniff } from './checks/unitSniff.ts';
import { checkVerticalAngles } from './checks/verticalAngles.ts';

/** Every check of a session against itself, in the order of the planning list C1 to C19. */
const checks: readonly Check[] = [
  checkSmashMatches,
  checkSmashBound,
  checkFaceToPath,
  checkLaunchBetween,
  checkSpinLoft,
  checkVerticalAngles,
  checkImpactSpin,
  checkSpinParts,
  checkSigns,
  checkRoll,
  checkFlightTime,
  checkFlightShape,
  checkUnitSniff,
  checkShotOrder,
  checkEstimated,
  checkMissingReadings,
  checkSmashAverages,
];

/** Runs every check on the shots of a session as the files have them, before anything is recomputed. */
export function checkSession(session: Session, context: CheckContext = {}): readonly Problem[] {
  return checks.flatMap((check) => check(session, context));
}
