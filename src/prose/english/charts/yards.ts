import type { MetricFindings } from '../../../findings/findings.ts';
import type { Attribution, Part } from '../../../flight/attribution.ts';
import type { Printing } from '../../printSteps.ts';
import { unitFor, unitWord } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { countWord } from '../../words.ts';
import { yardsInShort } from '../../yardsSentences.ts';
import { notDrawn } from './notDrawn.ts';
import { sidedRange } from './ranges.ts';

type Attributed = Extract<Attribution, { readonly state: 'attributed' }>;

/** The words of *Where do the yards come from?*: the difference in carry between `a` and `b`, part by part. */
export function yardsWords(
  attribution: Attributed,
  metric: MetricFindings,
  a: string,
  b: string,
  telling: Telling,
) {
  const word = unitWord(unitFor('carry', telling.system));
  const sets = attribution.sets.length;
  return {
    question: yardsQuestion(telling),
    subject: `The difference in carry between ${a} and ${b}, part by part`,
    found: [yardsInShort(attribution, a, b, metric.class === 'measured' ? null : metric.readBy, telling)],
    signs: [
      `Estimated by a flight model with ${countWord(sets)} published ${sets === 1 ? 'set' : 'sets'} of coefficients, not measured. Bar: likely range.`,
    ],
    numbers: 'the difference in carry, part by part',
    axis: `${word} farther`,
    tableCaption: `Where the difference in carry between ${a} and ${b} comes from`,
    tableHead: ['Part', `Likely, in ${word}`],
    measured: metric.class === 'measured' ? 'Measured difference' : 'Calculated difference',
    rest: 'Not explained',
  };
}

/** What a part is worth towards either of two: "likely 7 to 14 yards for Heron", "not settled, anything from ...". */
export function partWords(
  { settled, range }: Pick<Part, 'settled' | 'range'>,
  a: string,
  b: string,
  printing: Printing,
): string {
  const words = sidedRange({ first: a, second: b, ci: range }, printing);
  return settled ? words : `not settled, ${words}`;
}

export const yardsQuestion = ({ system }: Telling): string =>
  `Where do the ${unitWord(unitFor('carry', system))} come from?`;

/** Why a difference has no account. */
export function noAccount({ why }: Exclude<Attribution, Attributed>): string {
  switch (why) {
    case 'too-few-shots':
    case 'too-few-rounds':
      return notDrawn.tooFewLaunches;
    case 'nothing-varied':
      return notDrawn.launchesAlike;
    case 'carry-out-of-reach':
      return notDrawn.carryOutOfReach;
  }
}
