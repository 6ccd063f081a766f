import { calibrate } from '../flight/calibration.ts';
import { flightModel, type FlightModel } from '../flight/flightModel.ts';
import type { FlownShot } from '../flight/flownShot.ts';
import type { Launch } from '../flight/launch.ts';
import { launchesOf } from '../flight/launchesOf.ts';
import { modelledReadings } from '../flight/modelledReadings.ts';
import { quickStep } from '../flight/quickStep.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { canonicalUnit } from '../trade/units.ts';
import { airOfConditions } from './airOfConditions.ts';
import type { Conditions } from './authored/conditions.ts';
import type { Session } from './session.ts';
import type { ShotColumn } from './shots/shotFile.ts';

/** What our flight model may fill in where a session has no reading of it. */
const modelledMetrics = ['carry', 'apex', 'descent_angle'] as const satisfies readonly MetricId[];
type ModelledMetric = (typeof modelledMetrics)[number];

const mostFlownFinely = 5000;

/** A centimetre or a hundredth of a degree: finer than the model is good to. */
const stepsInOne = 100;

/** The heading of a column that no file has. */
export const flightModelHeading = 'flight model';

/**
 * The session with carry, apex and descent angle worked out by our flight model where the files have no such column and
 * do have ball speed, launch angle and spin. Tuned to the carries that were read, where there are any. More than 5,000
 * shots are flown in `quickStep`s, which changes a carry by 2 cm at most.
 */
export function withModelledColumns(session: Session, conditions: Conditions): Session {
  const missing = modelledMetrics.filter((metric) => session.columns[metric] === undefined);
  const launches = launchesOf(session.shots.map(({ values }) => values));
  if (missing.length === 0 || launches.every((launch) => launch === null)) return session;
  const tuned = modelFor(session, launches, conditions);
  const model = session.shots.length > mostFlownFinely ? { ...tuned, step: quickStep } : tuned;
  const columns: Partial<Record<MetricId, ShotColumn>> = { ...session.columns };
  for (const metric of missing) columns[metric] = modelledColumn(metric);
  const shots = session.shots.map((shot, index) => {
    const launch = launches[index] ?? null;
    const readings = launch === null ? null : modelledReadings(launch, model);
    const added = Object.fromEntries(
      missing.map((metric) => [metric, readings === null ? null : inSteps(readings[metric])]),
    );
    return { ...shot, values: { ...shot.values, ...added } };
  });
  const { coefficients, dragScale, air } = model;
  return { ...session, columns, shots, modelledWith: { coefficients: coefficients.id, dragScale, air } };
}

/** To the step of `modelledColumn`, so that the file of shots can hold what the figures are made of. */
const inSteps = (reading: number): number => Math.round(reading * stepsInOne) / stepsInOne;

function modelFor(
  session: Session,
  launches: readonly (Launch | null)[],
  conditions: Conditions,
): FlightModel {
  const model = flightModel({ air: airOfConditions(conditions) });
  const flown = session.shots.flatMap(({ values, excluded }, index): FlownShot[] => {
    const launch = launches[index] ?? null;
    return launch !== null && excluded === null && typeof values.carry === 'number'
      ? [{ launch, carry: values.carry }]
      : [];
  });
  const tuned = calibrate(flown, model);
  return tuned.state === 'not-possible' ? model : { ...model, dragScale: tuned.dragScale };
}

function modelledColumn(metric: ModelledMetric): ShotColumn {
  return {
    metric,
    heading: flightModelHeading,
    column: 0,
    unit: canonicalUnit[metrics[metric].dimension],
    step: 1 / stepsInOne,
    class: 'modelled',
  };
}
