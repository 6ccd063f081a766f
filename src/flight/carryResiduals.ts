import { evenlySpread } from '../stats/evenlySpread.ts';
import type { FlightModel } from './flightModel.ts';
import type { FlownShot } from './flownShot.ts';
import { comesDownAt } from './trajectory.ts';

const mostFlown = 2000;

/**
 * What the model leaves over in each group of shots: carry read minus carry modelled, metres, shot by shot. Means that
 * differ between groups, or much scatter within one, suggest wind, a change of ball, or carries worked out differently
 * for some shots. Of a group of more than 2,000 shots, 2,000 evenly spread ones are flown.
 */
export function carryResiduals(
  groups: readonly (readonly FlownShot[])[],
  model: FlightModel,
): readonly (readonly number[])[] {
  return groups.map((shots) =>
    evenlySpread(shots, mostFlown).map(({ launch, carry }) => carry - comesDownAt(launch, model).carry),
  );
}
