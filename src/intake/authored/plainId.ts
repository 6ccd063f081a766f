import { answer } from './answers.ts';
import type { Schema } from './trouble.ts';

/** The id of a contender or a hitter: part of addresses, so kept plain. */
export const plainId: Schema<string> = answer(
  'an id of small letters, digits and hyphens, such as alder or birch-2',
  (typed) => (/^[a-z0-9]+(-[a-z0-9]+)*$/.test(typed) && typed.length <= 40 ? typed : null),
  'Use small letters, digits and single hyphens only; the name for readers goes into "label".',
  'an id of small letters, digits and hyphens, 40 at most',
);
