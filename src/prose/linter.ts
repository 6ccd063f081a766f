import type { Findings } from '../findings/findings.ts';
import type { Front } from '../intake/authored/front.ts';
import type { PlaceOf } from '../intake/authored/places.ts';
import type { Path } from '../intake/authored/tree.ts';
import type { Quantity } from '../intake/authored/quantity.ts';
import type { ProblemKind } from '../problems/kinds.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Offered, Place as WholePlace, Problem, Severity } from '../problems/problem.ts';
import { carefulProblems, quoted, type Reading } from './carefulProblems.ts';
import { whatTheShotsBear } from './claimSentence.ts';
import { valueInstead, weighedFigures } from './linterFigures.ts';
import { offerReady, sayReady } from './readySentence.ts';
import { hasInterest } from './interestStatements.ts';
import { unclaimedComparisons, type UnclaimedComparison } from './linterComparatives.ts';
import {
  isKnown,
  valueOfNumber,
  valuesFound,
  valuesWritten,
  writtenNumbers,
  type KnownValue,
} from './linterNumbers.ts';
import { markupProblems } from './linterMarkup.ts';
import { numbersInTables } from './linterTables.ts';
import { unshownEquality } from './linterEqualities.ts';
import { placesIn, sentencesOf, type ProseSentence } from './linterText.ts';
import { carefulWords } from './linterWords.ts';
import type { NarrativeSource } from './narrative.ts';
import { lintNames } from './lintNames.ts';
import type { Telling } from './telling.ts';

type Place = Partial<WholePlace> & { readonly file: string };

interface LinterContext {
  readonly telling: Telling;
  readonly front: Front;
  /** Whether what is found stops the build. */
  readonly strict: boolean;
}

/**
 * Reads the fitter's paragraphs for what the shots do not support: comparisons without a claim, numbers from nowhere,
 * absolutes, promises, words of contest, outcomes never measured, independence where there is an interest. Only a
 * comparison that the shots speak against is an error by itself.
 */
export function lintNarrative(source: NarrativeSource, context: LinterContext): readonly Problem[] {
  const lint = linterFor(context, 'narrative');
  const placeAt = placesIn(source.text, source.firstLine);
  const known = knownValues(context);
  return [
    ...sentencesOf(source.text).flatMap((sentence) => {
      const placeIn = (offset: number): Place => ({ file: source.file, ...placeAt(sentence.start + offset) });
      return [...lint(sentence, placeIn), ...markupProblems(sentence, placeIn)];
    }),
    ...numbersInTables(source.text)
      .filter(({ number }) => !isKnown(number, known))
      .map(({ at, heading, cell }) =>
        unmatched(`"${cell}" under "${heading}"`, { file: source.file, ...placeAt(at) }, severityOf(context)),
      ),
  ];
}

const severityOf = ({ strict }: LinterContext): Severity => (strict ? 'error' : 'warning');

/** What a number in prose may repeat: the findings, and what the front matter writes (loft, lie, length, distances). */
function knownValues({ telling: { findings }, front }: LinterContext): readonly KnownValue[] {
  const kept = knownOf.get(findings);
  if (kept?.front === front) return kept.values;
  const values = [...valuesFound(findings), ...valuesWritten(front)];
  knownOf.set(findings, { front, values });
  return values;
}

/** Of each report: its answers and its narrative are held against the same values. */
const knownOf = new WeakMap<Findings, { readonly front: Front; readonly values: readonly KnownValue[] }>();

function unmatched(
  found: string,
  place: Place,
  severity: Severity,
  instead: string | null = 'for example {{ mean carry ... }}',
): Problem {
  return makeProblem('number-unmatched', place, {
    expected: 'a number that the shots or the front matter give',
    found,
    cure:
      instead === null
        ? 'Leave the number out, or write it where it was recorded: among the contenders, what was held, or the conditions.'
        : `Let the value come from the shots: ${instead}; or write it where it was recorded, in the front matter.`,
    severity,
  });
}

/**
 * Reads the title, the summary, the question and the words of the claims in the same way; they stand on pages and in
 * lists. Names, and what is told of the test beside its shots, are read for words to be careful with.
 */
export function lintAnswers(placeOf: PlaceOf, context: LinterContext): readonly Problem[] {
  const { title, summary, question, claims } = context.front;
  const lint = linterFor(context, 'front matter');
  const read = (
    text: string,
    path: Path,
    unread: readonly ProblemKind[],
    ownSize?: Quantity | null,
  ): Problem[] =>
    sentencesOf(text)
      .flatMap((sentence) => lint(sentence, () => placeOf(path), ownSize))
      .filter(({ kind }) => !unread.includes(kind));
  return [
    // A title may name a distance that is a purpose, not a result: "Two clubs for the 200-yard gap".
    ...read(title, ['title'], ['number-unmatched']),
    ...read(question, ['question'], ['number-unmatched']),
    ...(summary === null ? [] : read(summary, ['summary'], [])),
    ...claims.flatMap(({ say, byAtLeast }, index) =>
      read(say, ['claims', index, 'say'], checkedAsClaims, byAtLeast),
    ),
    ...lintNames(placeOf, context, carefulWords({ interest: hasInterest(context.front) })),
  ];
}

/** A claim is the place for its own comparison; what it is about is checked with the claims. */
const checkedAsClaims: readonly ProblemKind[] = [
  'comparative-unclaimed',
  'comparative-contradicted',
  'outcome-unmeasured',
];

type Lint = (
  sentence: ProseSentence,
  placeAt: (offset: number) => Place,
  /** Of a claim, the size that it states; not given where there is no claim. */
  ownSize?: Quantity | null,
) => Problem[];

/** Narratives can hold references, and the answers of the front matter cannot. */
type Where = 'narrative' | 'front matter';

type SentenceReading = Reading & { readonly where: Where };

/** A lone letter or a rule of dashes says nothing. */
const holdsWords = /\p{L}{2}|\d/u;

function linterFor(context: LinterContext, where: Where): Lint {
  const { telling, front } = context;
  const severity = severityOf(context);
  const reading: SentenceReading = { telling, severity, where };
  const words = carefulWords({ interest: hasInterest(front) });
  const known = knownValues(context);
  return (sentence, placeOf, ownSize) => {
    if (!holdsWords.test(sentence.text)) return [];
    const weighed = ownSize === undefined ? weighedFigures(sentence.text, telling) : [];
    const own = ownSize == null ? [] : writtenNumbers(ownSize.typed).map(valueOfNumber);
    return [
      ...carefulProblems(sentence, words, placeOf, reading),
      ...(sentence.answered ? [] : unclaimedComparisons(sentence.text, telling)).map((comparison) =>
        unclaimed(comparison, sentence, placeOf(comparison.at), reading),
      ),
      ...(sentence.answered ? [] : alikeProblems(sentence, placeOf, reading)),
      ...weighed
        .filter(({ agrees }) => !agrees)
        .map(({ text, at, expected, cure }) =>
          makeProblem('number-differs', placeOf(at), {
            expected,
            found: quoted(sentence.text, text),
            cure: where === 'narrative' ? cure : 'Write what the shots give, or leave the number out.',
            severity,
          }),
        ),
      ...writtenNumbers(sentence.text)
        .filter(({ at }) => weighed.every((figure) => figure.at !== at))
        .filter((number) => !number.ofAPlace && !isKnown(number, [...known, ...own]))
        .map((number) =>
          unmatched(
            quoted(sentence.text, number.text.replace(/ °$/, '°')),
            placeOf(number.at),
            severity,
            where === 'narrative' ? valueInstead(sentence.text, number, telling) : null,
          ),
        ),
    ];
  };
}

function alikeProblems(
  { text, written }: ProseSentence,
  placeOf: (offset: number) => Place,
  { telling, severity, where }: SentenceReading,
): Problem[] {
  const equality = unshownEquality(text, telling);
  if (equality === null) return [];
  return [
    makeProblem('comparative-unclaimed', placeOf(equality.at), {
      expected:
        'two called alike only where the shots show it: seeing no difference does not show that there is none',
      found: quoted(text, equality.word),
      cure: `The shots say: ${equality.says}`,
      offered: offerReady(
        { prints: equality.says, reference: equality.reference, claim: null },
        where,
        written,
      ),
      severity,
    }),
  ];
}

function unclaimed(
  { word, claim, contradicted, ready }: UnclaimedComparison,
  { text, written }: ProseSentence,
  place: Place,
  { telling, severity, where }: SentenceReading,
): Problem {
  const found = quoted(text, word);
  const offer = ready === null ? '' : ` ${sayReady(ready, where)}`;
  const offerIn = (besides: string): Offered | null =>
    ready === null ? null : offerReady(ready, where, written, besides);
  if (contradicted !== null) {
    const cure = `The shots support: ${whatTheShotsBear(contradicted, telling)}.`;
    return makeProblem('comparative-contradicted', place, {
      expected: 'a comparison that the shots do not speak against',
      found,
      cure: cure + offer,
      offered: offerIn(cure),
    });
  }
  const besides = claim === null ? '' : `The claim "${claim.say}" does not stand.`;
  return makeProblem('comparative-unclaimed', place, {
    expected: 'a comparison that a claim of the report supports, or one from the findings',
    found,
    cure: (besides + offer).trim() || notMeasured,
    offered: offerIn(besides),
    severity,
  });
}

const notMeasured = 'Take it out: no column of the session file tells of it.';
