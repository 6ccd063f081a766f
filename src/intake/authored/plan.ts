import type { z } from 'zod';
import { counted, isoDate, text } from './answers.ts';
import { strict } from './strict.ts';

/** What was decided before hitting; `date` says when. */
export const plan = strict({
  date: isoDate.describe('the day on which it was decided').exactOptional(),
  shots_per_contender: counted('a number of shots').describe('how many shots with each').exactOptional(),
  order: text('the order of hitting, such as "random rotation"').exactOptional(),
  seed: text('the seed of the order sheet').exactOptional(),
  exclusion_rule: text('the rule by which a shot is left out').exactOptional(),
  stopping_rule: text('when hitting ends').exactOptional(),
  expectation: text('what was expected beforehand').exactOptional(),
  warm_up: text('how the hitter warmed up').exactOptional(),
});

export type Plan = z.infer<typeof plan>;
