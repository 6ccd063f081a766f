import { interestInEnglish, interestInFewWords } from '../prose/english/interest.ts';
import { bearingOn, type InterestStatement } from '../prose/interestStatements.ts';
import type { PairAnswer } from '../prose/statement.ts';
import { weighing } from './interestInShort.ts';
import type { Report } from './report.ts';
import { said, type Said } from './said.ts';

/** What weighs most where there is room for one: money, gifts, things, a first look, sentences of the shop's own, sales. */
const gravity: readonly InterestStatement['kind'][] = [
  'payment',
  'gifts',
  'supply',
  'own-words',
  'seen',
  'sells',
];

/** The interest that bears on what a picture or caption compares; nothing of it is told less exactly than on the page. */
export interface FigureInterest {
  /** The gravest that bears on whoever is told first. */
  readonly one: readonly Said[];
  readonly inFewWords: readonly Said[];
  readonly whole: readonly Said[];
}

/** The interest that bears on what is compared. `ids`: all of them; `first`: the pair told first, null where none is. */
export function figureInterest(
  { source: { front, shop }, telling }: Report,
  ids: readonly string[],
  first: PairAnswer | null,
): FigureInterest {
  const bearing = bearingOn(weighing(front), ids);
  const nearest = first === null ? bearing : bearingOn(bearing, [first.ahead, first.behind]);
  const [gravest] = [...nearest].toSorted((x, y) => gravity.indexOf(x.kind) - gravity.indexOf(y.kind));
  const nameOf = telling.the;
  const brief = { speaker: { shop: 'The shop' }, nameOf };
  const told = (sentences: readonly string[]): readonly Said[] =>
    sentences.flatMap((text) => said('interest', text));
  return {
    // What is sold is one sentence of all of them.
    one: told(
      interestInFewWords(
        gravest?.kind === 'sells'
          ? bearing.filter(({ kind }) => kind === 'sells')
          : bearing.filter((one) => one === gravest),
        brief,
      ),
    ),
    inFewWords: told(interestInFewWords(bearing, brief)),
    whole: told(interestInEnglish(bearing, { speaker: { shop: shop?.name ?? 'The publisher' }, nameOf })),
  };
}
