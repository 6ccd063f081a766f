import { calibrate } from './calibration.ts';
import type { CoefficientSet } from './coefficientSet.ts';
import type { FlightModel } from './flightModel.ts';
import type { FlownShot } from './flownShot.ts';

/**
 * The model with each set's coefficients and the drag factor that fits these shots; sets that no factor fits are left
 * out. Without shots, each set untuned.
 */
export function calibratedModels(
  shots: readonly FlownShot[],
  model: FlightModel,
  sets: readonly CoefficientSet[],
): readonly FlightModel[] {
  return sets.flatMap((coefficients) => {
    const own = { ...model, coefficients, dragScale: 1 };
    if (shots.length === 0) return [own];
    const calibration = calibrate(shots, own);
    return calibration.state === 'not-possible' ? [] : [{ ...own, dragScale: calibration.dragScale }];
  });
}
