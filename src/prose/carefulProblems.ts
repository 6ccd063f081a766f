import type { ProblemKind } from '../problems/kinds.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Place, Problem, Severity } from '../problems/problem.ts';
import { isAboutCompared } from './linterNames.ts';
import type { ProseSentence } from './linterText.ts';
import { flightWords, isDenied } from './linterWords.ts';
import type { CarefulWord } from './carefulWord.ts';
import { offerReady, readyAbout, sayReady } from './readySentence.ts';
import type { Telling } from './telling.ts';

/** What a sentence is read with. */
export interface Reading {
  readonly telling: Telling;
  readonly severity: Severity;
  /** What holds the sentence; in place of a name nothing can be offered. */
  readonly where: 'narrative' | 'front matter' | 'name';
}

/** A problem for each sort of careful word in a sentence, where it counts. */
export function carefulProblems(
  { text, written }: Pick<ProseSentence, 'text' | 'written'>,
  words: readonly CarefulWord[],
  placeOf: (offset: number) => Partial<Place> & { readonly file: string },
  { telling, severity, where }: Reading,
): Problem[] {
  const countsHere = (counts: CarefulWord['counts']): boolean => {
    switch (counts) {
      case 'anywhere':
        return true;
      case 'of shots':
        return flightWords.test(text) || /\bgain(?:s|ed)?\b|\bwill\b/i.test(text);
      case 'of what is compared':
        return isAboutCompared(text, telling);
    }
  };
  const told = new Set<ProblemKind>();
  return words.flatMap(({ kind, pattern, expected, cure, mayBeDenied, counts }) => {
    // One word of a sort is enough: whoever mends it reads the whole sentence.
    const found = told.has(kind) ? null : pattern.exec(text);
    if (found === null || !countsHere(counts) || (mayBeDenied && isDenied(text, found.index))) return [];
    told.add(kind);
    const ready = where === 'name' || !offering.has(kind) ? null : readyAbout(text, telling);
    const offer = ready === null || where === 'name' ? '' : ` ${sayReady(ready, where)}`;
    return [
      makeProblem(kind, placeOf(found.index), {
        expected,
        found: quoted(text, found[0]),
        cure: cure + offer,
        offered: ready === null || where === 'name' ? null : offerReady(ready, where, written, cure),
        severity,
      }),
    ];
  });
}

/** Words in whose place the sentence that the shots support will do. */
const offering: ReadonlySet<ProblemKind> = new Set<ProblemKind>([
  'absolute-word',
  'advice-given',
  'contest-word',
  'promise-made',
]);

const longestQuote = 60;

/** The word, and the sentence it stands in as far as it is short. */
export function quoted(sentence: string, word: string): string {
  const whole = startOf(sentence);
  const short = whole.length <= longestQuote ? whole : `${whole.slice(0, longestQuote).trimEnd()}...`;
  return `"${word.replace(/\s+/g, ' ').trim()}" in "${short}"`;
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
