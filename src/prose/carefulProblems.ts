import { makeProblem } from '../problems/makeProblem.ts';
import type { Place, Problem, Severity } from '../problems/problem.ts';
import { isAboutCompared } from './linterNames.ts';
import type { ProseSentence } from './linterText.ts';
import { flightWords, isDenied, type CarefulWord } from './linterWords.ts';
import type { Telling } from './telling.ts';

/** A problem for each sort of careful word in a sentence, where it counts. */
export function carefulProblems(
  { text }: Pick<ProseSentence, 'text'>,
  words: readonly CarefulWord[],
  telling: Telling,
  placeOf: (offset: number) => Partial<Place> & { readonly file: string },
  severity: Severity,
): Problem[] {
  const beside = {
    anywhere: true,
    'of shots': flightWords.test(text) || /\bgain(?:s|ed)?\b|\bwill\b/i.test(text),
    'of what is compared': isAboutCompared(text, telling),
  };
  return words.flatMap(({ kind, pattern, expected, cure, mayBeDenied, counts }) => {
    const found = pattern.exec(text);
    if (found === null || !beside[counts] || (mayBeDenied && isDenied(text, found.index))) return [];
    return [
      makeProblem(kind, placeOf(found.index), { expected, found: quoted(text, found[0]), cure, severity }),
    ];
  });
}

const longestQuote = 60;

/** The word, and the sentence it stands in as far as it is short. */
export function quoted(sentence: string, word: string): string {
  const whole = startOf(sentence);
  const short = whole.length <= longestQuote ? whole : `${whole.slice(0, longestQuote).trimEnd()}...`;
  return `"${word.replace(/\s+/g, ' ')}" in "${short}"`;
}

/** A sentence with single blanks; of a long one no more than a quotation can hold. */
function startOf(sentence: string): string {
  const from = sentence.trimStart();
  const start = from
    .slice(0, 10 * longestQuote)
    .replace(/\s+/g, ' ')
    .trim();
  return start.length > longestQuote ? start : from.replace(/\s+/g, ' ').trim();
}
