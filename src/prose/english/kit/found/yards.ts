import { printDifference } from '../../../printSteps.ts';
import { printingFor, type Telling } from '../../../telling.ts';
import { modelPrinting } from '../../../unjudgedPrinting.ts';
import type { YardsPart, YardsSplit } from '../../../yardsSplit.ts';
import { headOf } from '../../answerHead.ts';
import { toldInBrief } from '../../answersInBrief.ts';
import { inShortUnit } from '../../statementInBrief.ts';
import { partNameInBrief } from '../../yards.ts';
import { headingFound, type ChartedAnswer } from './pairCharts.ts';
import type { ChartFinding } from './chartFinding.ts';

/**
 * What a flight model puts a difference down to, beside the answer: "Carry of balls, one golfer: Heron past Wren, by a model
 * about 11 of 12 yd from ball speed."
 */
export function yardsFound(
  { block, answer, heading }: ChartedAnswer,
  { gap, parts, ahead, behind }: YardsSplit,
  telling: Telling,
): ChartFinding {
  const printing = modelPrinting(printingFor(answer.about.metric, telling));
  const print = (si: number): string => printDifference(si, printing);
  const told = parts.filter((part) => part.told).toSorted((x, y) => Math.abs(y.value) - Math.abs(x.value));
  const nameOf = ({ id }: YardsPart): string =>
    id === null ? 'what it does not explain' : partNameInBrief(id, telling);
  const first = told.find(({ value }) => value > 0 && Number(print(value)) <= Number(print(gap)));
  const [largest] = told;
  const split = (about: string): string =>
    first !== undefined
      ? `by ${about}${print(first.value)} of ${inShortUnit(print(gap), printing)} from ${nameOf(first)}`
      : largest !== undefined
        ? `by a model ${nameOf(largest)} alone would make ${inShortUnit(print(largest.value), printing)} for ${telling.the(largest.value > 0 ? ahead : behind)}`
        : 'by a model no part of it can be named';
  const bare = toldInBrief(block, telling, 'bare');
  return {
    forms: [
      `${headOf(block, telling, { form: 'short' })}: ${split('model ')}.`,
      `${headOf(block, telling, { form: 'short' })}: ${bare}; ${split('model ')}.`,
      `${headOf(block, telling, { form: 'short' })}: ${bare}; ${split('a model about ')}.`,
      `${headOf(block, telling)}: ${bare}; ${split('a model about ')}.`,
    ],
    further: headingFound(block, heading, telling).forms,
  };
}
