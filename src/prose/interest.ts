import type { Source } from '../intake/authored/source.ts';
import { interestInEnglish } from './english/interest.ts';
import { interestsOf, shortNames } from './interestStatements.ts';

/** The shop's interest in what it tested, in sentences, with the shop speaking. */
export function interestSentences({ front }: Pick<Source, 'front'>): readonly string[] {
  return interestInEnglish(interestsOf(front), { speaker: 'we', nameOf: shortNames(front.contenders) });
}
