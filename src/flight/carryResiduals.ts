import { meanOf, moments } from '../stats/moments.ts';
import { evenlySpread } from '../stats/evenlySpread.ts';
import type { FlightModel } from './flightModel.ts';
import type { FlownShot } from './flownShot.ts';
import { comesDownAt } from './trajectory.ts';

const mostFlown = 2000;

/** Carry read minus carry modelled, metres, shot by shot, with mean and sd (null under two shots). */
interface CarryResiduals {
  readonly residuals: readonly number[];
  readonly mean: number | null;
  readonly sd: number | null;
}

/**
 * What the model leaves over in each group of shots. Means that differ between groups, or much scatter within one,
 * suggest wind, a change of ball, or carries worked out differently for some shots. Of a group of more than 2,000 shots,
 * 2,000 evenly spread ones are flown.
 */
export function carryResiduals(
  groups: readonly (readonly FlownShot[])[],
  model: FlightModel,
): readonly CarryResiduals[] {
  return groups.map((shots) => {
    const residuals = evenlySpread(shots, mostFlown).map(
      ({ launch, carry }) => carry - comesDownAt(launch, model).carry,
    );
    return {
      residuals,
      mean: residuals.length > 0 ? meanOf(residuals) : null,
      sd: residuals.length > 1 ? Math.sqrt(moments(residuals).variance) : null,
    };
  });
}
