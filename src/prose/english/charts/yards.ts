import type { MetricFindings } from '../../../findings/findings.ts';
import type { Attribution } from '../../../flight/attribution.ts';
import { unitFor, unitWord, withUnit } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { countWord } from '../../words.ts';
import { yardsPart, type YardsPart, type YardsSplit } from '../../yardsSplit.ts';
import { partName, sayYards } from '../yards.ts';
import { printDifference, type Printing } from '../../printSteps.ts';

type Attributed = Extract<Attribution, { readonly state: 'attributed' }>;

/** The words of *Where do the yards come from?*: the difference in carry by which `a` is ahead of `b`, part by part. */
export function yardsWords(
  attribution: Attributed,
  metric: MetricFindings,
  { a, b }: { readonly a: string; readonly b: string },
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

/** Why it is not drawn. */
export const notCarry = 'This chart explains differences in carry only.';
export const noCarryDifference =
  'This chart takes a difference in carry whose cause is clear, one golfer, eight shots with either, and launches on file.';
export const noFlightRecorded = 'Nothing of the flight was recorded that could account for the difference.';

/** Why a difference has no account. */
export function noAccount({ why }: Exclude<Attribution, Attributed>): string {
  switch (why) {
    case 'too-few-shots':
    case 'too-few-rounds':
      return 'Too few shots have a launch to split a difference over.';
    case 'nothing-varied':
      return 'Nothing about the launches varied.';
    case 'carry-out-of-reach':
      return 'No flight model gives carries like these; conditions or data are unusual.';
  }
}

/** "By the model about 11 of 12 yards come from ball speed"; of a part that is more than all, what it alone would make. */
export function yardsFinding(
  { parts, gap, ahead, behind }: YardsSplit,
  calculated: boolean,
  printing: Printing,
  telling: Telling,
): string {
  const print = (si: number): string => printDifference(si, printing);
  const told = parts.filter((part) => part.told).toSorted((x, y) => Math.abs(y.value) - Math.abs(x.value));
  const first = told.find(({ value }) => value > 0 && Number(print(value)) <= Number(print(gap)));
  const nameOf = ({ id }: YardsPart): string =>
    id === null ? 'what it does not explain' : partName(id, telling);
  const by = calculated ? 'By a model, of a carry that was calculated too,' : 'By the model';
  const [largest] = told;
  if (first === undefined && largest !== undefined) {
    const [more, less] = largest.value > 0 ? [ahead, behind] : [behind, ahead];
    return `${by} ${nameOf(largest)} alone would put ${more} about ${withUnit(print(largest.value), printing.unit)} ahead of ${less}`;
  }
  if (first === undefined) return `${by} no part of the difference can be named`;
  return `${by} about ${print(first.value)} of ${withUnit(print(gap), printing.unit)} ${print(first.value) === '1' ? 'comes' : 'come'} from ${nameOf(first)}`;
}
