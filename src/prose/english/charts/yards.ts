import type { MetricFindings } from '../../../findings/findings.ts';
import type { Attribution } from '../../../flight/attribution.ts';
import { unitFor, unitWord } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { countWord } from '../../words.ts';
import { yardsPart } from '../../yardsSplit.ts';
import { sayYards } from '../yards.ts';
import { notDrawn } from './notDrawn.ts';

type Attributed = Extract<Attribution, { readonly state: 'attributed' }>;

/** The words of *Where do the yards come from?*: the difference in carry by which `a` is ahead of `b`, part by part. */
export function yardsWords(
  attribution: Attributed,
  metric: MetricFindings,
  a: string,
  b: string,
  telling: Telling,
) {
  const word = unitWord(unitFor('carry', telling.system));
  const sets = attribution.sets.length;
  // The account is of the pair as found, whoever is ahead.
  const { gap } = attribution;
  const flip = gap.value >= 0 ? 1 : -1;
  const parts = attribution.parts.map((part) => yardsPart(part.id, part, flip));
  const calculatedBy = metric.class === 'measured' ? null : metric.readBy;
  return {
    question: yardsQuestion(telling),
    subject: `The difference in carry between ${a} and ${b}, part by part`,
    found: [sayYards({ parts, gap: flip * gap.value, ahead: a, behind: b }, calculatedBy, telling)],
    signs: [
      `Estimated by a flight model with ${countWord(sets)} published ${sets === 1 ? 'set' : 'sets'} of coefficients, not measured.`,
    ],
    numbers: 'the difference in carry, part by part',
    foot: 'Difference in average carry, part by part.',
    tableCaption: `Where the difference in carry between ${a} and ${b} comes from`,
    tableHead: ['Part', `Likely, in ${word}`],
    measured: metric.class === 'measured' ? 'Measured difference' : 'Calculated difference',
    rest: 'Not explained',
  };
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
