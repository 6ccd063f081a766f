import type { Front } from '../intake/authored/front.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem, Severity } from '../problems/problem.ts';
import { whatTheShotsBear } from './claimSentence.ts';
import { unclaimedComparisons, type UnclaimedComparison } from './linterComparatives.ts';
import { isKnown, valuesFound, valuesWritten, writtenNumbers } from './linterNumbers.ts';
import { placeAt, sentencesOf, type ProseSentence } from './linterText.ts';
import { carefulWords, flightWords, isDenied } from './linterWords.ts';
import type { NarrativeSource } from './narrative.ts';
import type { Telling } from './telling.ts';

interface LinterContext {
  readonly telling: Telling;
  readonly front: Front;
  /** Whether what is found stops the build. */
  readonly strict: boolean;
}

/**
 * Reads the fitter's paragraphs for what the shots do not bear: comparisons without a claim, numbers from nowhere,
 * absolutes, promises, words of contest, outcomes never measured, independence where there is an interest.
 */
export function lintNarrative(source: NarrativeSource, context: LinterContext): readonly Problem[] {
  const sentences = sentencesOf(source.text);
  const severity: Severity = context.strict ? 'error' : 'warning';
  const words = carefulWords({ interest: hasInterest(context.front) });
  const known = [...valuesFound(context.telling.findings), ...valuesWritten(context.front)];
  const at = ({ start }: ProseSentence, offset: number): { file: string; line: number; column: number } => ({
    file: source.file,
    ...placeAt(source.text, start + offset, source.firstLine),
  });
  return sentences.flatMap((sentence): Problem[] => [
    ...words.flatMap(({ kind, pattern, expected, cure, mayBeDenied, onlyOfShots }) => {
      const found = pattern.exec(sentence.text);
      if (found === null || (mayBeDenied && isDenied(sentence.text, found.index))) return [];
      if (
        onlyOfShots &&
        !(flightWords.test(sentence.text) || /\bgain(?:s|ed)?\b|\bwill\b/i.test(sentence.text))
      )
        return [];
      return [
        makeProblem(kind, at(sentence, found.index), {
          expected,
          found: quoted(sentence.text, found[0]),
          cure,
          severity,
        }),
      ];
    }),
    ...(sentence.answered ? [] : unclaimedComparisons(sentence.text, context.telling)).map((comparison) =>
      unclaimed(comparison, sentence, at(sentence, comparison.at), context.telling, severity),
    ),
    ...writtenNumbers(sentence.text)
      .filter((number) => !isKnown(number, known))
      .map((number) =>
        makeProblem('number-unmatched', at(sentence, number.at), {
          expected: 'a number that the shots or the front matter give',
          found: quoted(sentence.text, number.text.replace(/ °$/, '°')),
          cure: 'Let the value come from the shots, for example {{ mean carry ... }}; or write it where it was recorded, in the front matter.',
          severity,
        }),
      ),
  ]);
}

/** Whether the shop sells, borrows or is paid for anything it compares. */
export function hasInterest({ contenders, interests }: Pick<Front, 'contenders' | 'interests'>): boolean {
  const none = /^(?:none|no|nothing)\b/i;
  return (
    contenders.some(
      ({ soldHere, suppliedBy }) => soldHere !== 'no' || /\b(?:lent|given|donated|free)\b/i.test(suppliedBy),
    ) || !none.test(interests.commissionOrGifts.trim())
  );
}

function unclaimed(
  { word, claim, answer }: UnclaimedComparison,
  { text }: ProseSentence,
  place: { readonly file: string; readonly line: number; readonly column: number },
  telling: Telling,
  severity: Severity,
): Problem {
  const instead =
    answer === null
      ? ''
      : `, or let the findings say it: {{ answer ${answer.metric} ${answer.a} ${answer.b} }}`;
  return makeProblem('comparative-unclaimed', place, {
    expected: 'a comparison that a claim of the report bears out, or one from the findings',
    found: quoted(text, word),
    cure:
      claim === null
        ? `Add it to "claims"${instead}.`
        : `The claim "${claim.say}" does not stand. The shots bear: ${whatTheShotsBear(claim, telling)}.`,
    severity,
  });
}

const longestQuote = 60;

/** The word, and the sentence it stands in as far as it is short. */
function quoted(sentence: string, word: string): string {
  const whole = sentence.replace(/\s+/g, ' ').trim();
  const short = whole.length <= longestQuote ? whole : `${whole.slice(0, longestQuote).trimEnd()}...`;
  return `"${word.replace(/\s+/g, ' ')}" in "${short}"`;
}
