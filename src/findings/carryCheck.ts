import { at } from '../stats/at.ts';
import { calibrate } from '../flight/calibration.ts';
import { carryResiduals } from '../flight/carryResiduals.ts';
import { flightModel } from '../flight/flightModel.ts';
import type { FlownShot } from '../flight/flownShot.ts';
import { launchesOf } from '../flight/launchesOf.ts';
import { quickStep } from '../flight/quickStep.ts';
import type { Session } from '../intake/session.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { bonettSdInterval } from '../stats/sdInterval.ts';
import { shotGaps } from './shotGaps.ts';
import { confidence, fewestForCarryCheck, mostScatterM } from './thresholds.ts';

/**
 * Carries beside the flight model (C18), tuned to them by one factor: whether that factor is unusual, whether what
 * the model leaves over differs between contenders by more than half of what matters (Games-Howell), and whether it
 * scatters more than the model's own error (lower Bonett limit above 4 yards).
 *
 * @param ballVaried the test compares balls, whose flights are meant to differ
 */
export function checkCarries(session: Session, mattersM: number, ballVaried: boolean): readonly Problem[] {
  const column = session.columns.carry;
  const [file] = session.shots;
  if (column === undefined || file === undefined) return [];
  const counted = session.shots.filter(({ excluded }) => excluded === null);
  const launches = launchesOf(counted.map(({ values }) => values));
  const flownBy = session.contenders.map((contender) =>
    counted.flatMap((shot, index): FlownShot[] => {
      const launch = launches[index];
      const { carry } = shot.values;
      return shot.contender === contender && launch != null && typeof carry === 'number'
        ? [{ launch, carry }]
        : [];
    }),
  );
  const all = flownBy.flat();
  if (all.length < fewestForCarryCheck) return [];
  const place = { file: file.place.file, columnName: column.heading };
  const untuned = flightModel();
  const calibration = calibrate(all, untuned);
  if (calibration.state === 'not-possible') {
    return [unusual(place, 'carries that no drag of a golf ball gives at these launches')];
  }
  const tuned = { ...untuned, dragScale: calibration.dragScale, step: quickStep };
  const residuals = carryResiduals(flownBy, tuned);
  const samples = session.contenders.map((contender, index) => ({
    contender,
    values: at(residuals, index),
  }));
  return [
    ...(calibration.state === 'unusual'
      ? [unusual(place, `carries that take a drag factor of ${calibration.dragScale.toFixed(2)}`)]
      : []),
    ...(ballVaried ? [] : differing(samples, { step: column.step, mattersM }, place)),
    ...scattered(residuals, place),
  ];
}

interface At {
  readonly file: string;
  readonly columnName: string;
}

function unusual(place: At, found: string): Problem {
  return makeProblem('carry-unusual', place, {
    expected:
      'carries that a golf ball in usual air reaches: a drag factor of 0.88 to 1.05 in the flight model',
    found,
    cure: 'Check units, altitude, wind, ball and whether the monitor restates carries; then say so under conditions.',
    forReader: 'The carries are unusual for these launches: conditions, ball or data may be special.',
  });
}

function differing(
  samples: Parameters<typeof shotGaps>[0],
  { step, mattersM }: { readonly step: number; readonly mattersM: number },
  place: At,
): readonly Problem[] {
  const off = shotGaps(samples, confidence, step).gaps.filter(
    ({ ci, estimate }) => (ci[0] > 0 || ci[1] < 0) && Math.abs(estimate) > mattersM / 2,
  );
  return off.length === 0
    ? []
    : [
        makeProblem('carry-model-differs', place, {
          expected: 'carries that stand in the same relation to their launches with every contender',
          found: off.map(({ a, b }) => `${a} and ${b}`).join(', '),
          cure: 'Look for wind, a change of ball, or carries that were restated for some shots only.',
          forReader:
            'Launch for launch, carries differ from one to another by more than a flight model explains; wind, a change of ball or a setting of the monitor may be behind it.',
        }),
      ];
}

function scattered(residuals: readonly (readonly number[])[], place: At): readonly Problem[] {
  const wide = residuals.some(
    (own) =>
      own.length >= fewestForCarryCheck &&
      new Set(own).size > 1 &&
      bonettSdInterval(own, confidence)[0] > mostScatterM,
  );
  return wide
    ? [
        makeProblem('carry-scatters', place, {
          expected: 'carries that follow from ball speed, launch and spin to within some 4 yards',
          found: 'carries that scatter more widely round the flight model',
          cure: 'Look for gusts, misread spin, or carries that were restated for some shots only.',
          forReader: 'Carries scatter more than launches explain; wind or misread spin may be behind it.',
        }),
      ]
    : [];
}
