import type { SingleShots } from '../sure.ts';
import type { Telling } from '../telling.ts';
import { formatNumber } from '../numbers.ts';
import { comparisonOf } from './comparisons.ts';

/** What "likely" says, once beside an answer, the word itself apart; two main measures are held to a stricter level. */
export function likelyMeaning(mainMeasures: number): { readonly term: string; readonly meaning: string } {
  const of = mainMeasures > 1 ? '39 of 40' : '19 of 20';
  return {
    term: 'Likely:',
    meaning: `ranges made like these hold all the true average differences in at least ${of} such tests; they allow for luck in these shots and for nothing else.`,
  };
}

/** "One shot with each: Heron carried farther than Wren in 143 of 144 pairings, than Plover in 113." */
export function saySingleShots({ told }: SingleShots, telling: Telling): string {
  const parts = told.map(({ answer, more, of }, index) => {
    const before = told[index - 1];
    const same = before?.answer.ahead === answer.ahead;
    const { verb, [answer.by]: word } = comparisonOf(answer.about.metric);
    // Half a pairing is a tie, which nobody can picture.
    const count = Number.isInteger(more)
      ? formatNumber(more, 0)
      : `about ${formatNumber(Math.floor(more), 0)}`;
    const pairings =
      same && before.of === of
        ? count
        : `${count} of ${formatNumber(of, 0)}${index === 0 ? ' pairings' : ''}`;
    if (same) return `, than ${telling.the(answer.behind)} in ${pairings}`;
    const between = index === 0 ? '' : '; ';
    return `${between}${telling.the(answer.ahead)} ${verb} ${word} than ${telling.the(answer.behind)} in ${pairings}`;
  });
  return `One shot with each: ${parts.join('')}.`;
}
