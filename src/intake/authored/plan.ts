import type { z } from 'zod';
import { counted, isoDate, text } from './answers.ts';
import { answersOf, question, type Questions } from './question.ts';
import { strict } from './strict.ts';

/** What is asked of what was decided before hitting; `date` says when. */
export const planQuestions = {
  date: question(isoDate.describe('the day on which it was decided'), 'On which day, as year-month-day?'),
  shots_per_contender: question(
    counted('a number of shots').describe('how many shots with each'),
    'How many shots with each?',
  ),
  order: question(
    text('the order of hitting, such as "random rotation"'),
    'In which order, such as random rotation?',
  ),
  seed: question(text('the seed of the order sheet'), null),
  exclusion_rule: question(
    text('the rule by which a shot is left out'),
    'By which rule would a shot be left out?',
  ),
  stopping_rule: question(text('when hitting ends'), 'When would hitting end?'),
  expectation: question(text('what was expected beforehand'), 'What was expected?'),
  warm_up: question(text('how the hitter warmed up'), 'How did the hitter warm up?'),
} as const satisfies Questions<never>;

/** What was decided before hitting. */
export const plan = strict(answersOf(planQuestions));

export type Plan = z.infer<typeof plan>;
