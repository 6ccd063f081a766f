import { answer, typed } from './answers.ts';

/** The id of a contender or a hitter: part of addresses, so kept plain. */
export const plainId = answer(
  typed.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/).max(40),
  {
    expected: 'an id of small letters, digits and hyphens, such as alder or birch-2',
    cure: 'Use small letters, digits and single hyphens only; the name for readers goes into "label".',
  },
  'an id of small letters, digits and hyphens, 40 at most',
);
