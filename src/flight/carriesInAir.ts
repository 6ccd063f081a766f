import type { FlightModel } from './flightModel.ts';
import type { FlownShot } from './flownShot.ts';
import { fly } from './trajectory.ts';

/**
 * Carries as they would read in other air or wind, metres: the carry read plus what the model changes between the
 * two. Modelled figures, for comparing sessions of different days; `model` holds the session's own air and drag
 * factor. A factor fitted to the session takes up what its stated air gets wrong, so nothing is restated twice.
 */
export function carriesInAir(
  shots: readonly FlownShot[],
  model: FlightModel,
  other: Partial<Pick<FlightModel, 'air' | 'wind'>>,
): readonly number[] {
  const elsewhere = { ...model, ...other };
  return shots.map(({ launch, carry }) => carry + (fly(launch, elsewhere).carry - fly(launch, model).carry));
}
