import { counted, isoDate, text } from './answers.ts';
import { strict } from './strict.ts';
import type { Schema } from './trouble.ts';

/** What was decided before hitting; `date` says when. */
export interface Plan {
  readonly date?: string;
  readonly shotsPerContender?: number;
  /** The order as the shop states it, such as "random rotation". */
  readonly order?: string;
  readonly seed?: string;
  readonly exclusionRule?: string;
  readonly stoppingRule?: string;
  readonly expectation?: string;
  readonly warmUp?: string;
}

export const plan: Schema<Plan> = strict({
  date: isoDate.describe('the day on which it was decided').exactOptional(),
  shots_per_contender: counted('a number of shots').describe('how many shots with each').exactOptional(),
  order: text('the order of hitting, such as "random rotation"').exactOptional(),
  seed: text('the seed of the order sheet').exactOptional(),
  exclusion_rule: text('the rule by which a shot is left out').exactOptional(),
  stopping_rule: text('when hitting ends').exactOptional(),
  expectation: text('what was expected beforehand').exactOptional(),
  warm_up: text('how the hitter warmed up').exactOptional(),
});
