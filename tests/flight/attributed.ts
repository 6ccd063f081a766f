import { attribute, type Attribution } from '../../src/flight/attribution.ts';
import type { AttributionShot } from '../../src/flight/attributionPlan.ts';
import { coefficientSets } from '../../src/flight/coefficientSets.ts';
import { flightModel, type FlightModel } from '../../src/flight/flightModel.ts';
import { seededRandom } from '../../src/stats/random.ts';

export type Attributed = Extract<Attribution, { state: 'attributed' }>;

/** The attribution by all published sets, which must be possible. */
export function attributed(
  a: readonly AttributionShot[],
  b: readonly AttributionShot[],
  changes: Partial<{ model: FlightModel; byRounds: boolean; draws: number }> = {},
): Attributed {
  const attribution = attribute({
    a,
    b,
    byRounds: false,
    model: flightModel(),
    sets: coefficientSets,
    random: seededRandom('attribution'),
    ...changes,
  });
  if (attribution.state !== 'attributed') throw new Error(`not possible: ${attribution.why}`);
  return attribution;
}
