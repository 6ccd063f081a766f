import type { z } from 'zod';
import { counted, isoDate, text } from './answers.ts';
import { answersOf, type DraftedQuestion } from './question.ts';
import { strict } from './strict.ts';

/** What is asked of what was decided before hitting; `date` says when. */
export const planQuestions = {
  date: {
    answer: isoDate.describe('the day on which it was decided').exactOptional(),
    drafted: 'On which day, as year-month-day?',
  },
  shots_per_contender: {
    answer: counted('a number of shots').describe('how many shots with each').exactOptional(),
    drafted: 'How many shots with each?',
  },
  order: {
    answer: text('the order of hitting, such as "random rotation"').exactOptional(),
    drafted: 'In which order, such as random rotation?',
  },
  seed: {
    answer: text('the seed of the order sheet').exactOptional(),
    drafted: null,
  },
  exclusion_rule: {
    answer: text('the rule by which a shot is left out').exactOptional(),
    drafted: 'By which rule would a shot be left out?',
  },
  stopping_rule: {
    answer: text('when hitting ends').exactOptional(),
    drafted: 'When would hitting end?',
  },
  expectation: {
    answer: text('what was expected beforehand').exactOptional(),
    drafted: 'What was expected?',
  },
  warm_up: {
    answer: text('how the hitter warmed up').exactOptional(),
    drafted: 'How did the hitter warm up?',
  },
} as const satisfies Readonly<Record<string, DraftedQuestion>>;

/** What was decided before hitting. */
export const plan = strict(answersOf(planQuestions));

export type Plan = z.infer<typeof plan>;
