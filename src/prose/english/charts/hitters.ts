import type { MetricFindings, StatusId } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { shortUnit, unitFor } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, countWord } from '../../words.ts';
import { onlyThese } from '../golfers.ts';
import { differenceHeads, inBrackets } from './ranges.ts';
import type { PairAnswer } from '../../statement.ts';
import { tooLittle } from '../answerWords.ts';
import { comparisonOf } from '../comparisons.ts';
import { causeOf } from '../names.ts';

/** What the chart of a pair's difference, row by row, is of. */
export interface RowsOf {
  readonly a: string;
  readonly b: string;
  readonly more: string;
}

/** The words of *Who gained?* of one pair, `a` ahead. */
export function golferRowsWords(
  metric: MetricFindings,
  { a, b, more }: RowsOf,
  withAnother: boolean,
  telling: Telling,
) {
  const { name } = metrics[metric.id];
  return {
    subject: `Each golfer's own difference in average ${name} between ${a} and ${b}`,
    found: [...(withAnother ? [] : [onlyThese(telling.findings.design.hitters)])],
    signs: [
      ...(withAnother ? ["The last bar: what another golfer's own test of this length would show."] : []),
    ],
    opening: `Differences in ${name}, counted towards ${a}.`,
    numbers: `${name} differences, golfer by golfer`,
    tableCaption: `${a} and ${b}, golfer by golfer: difference in average ${name}. Positive: ${a} ${more}.`,
    tableHead: ['Golfer', ...differenceHeads(inBrackets(shortUnit(unitFor(metric.id, telling.system))))],
  };
}

/** The row of all golfers together. */
export const allGolfers = (count: number): string => (count === 2 ? 'Both' : `All ${countWord(count)}`);

/** The row of a golfer who has not hit. */
export const anotherGolfer = 'Another golfer';

/** What such a golfer might see, in a sentence. */
export const sayAnotherGolfer = (range: string): string => `${anotherGolfer}'s own test: ${range}.`;

/** How many rows of a pair's own differences have the first-named ahead. */
export interface RowsAhead {
  readonly ahead: number;
  readonly of: number;
}

/** "On average Sorrel carried farther than Rowan for seven of eight golfers", with the answer of all where that is another. */
export function golfersFinding(
  { ahead: count, of }: RowsAhead,
  { ahead, behind, by, status, about }: PairAnswer,
  telling: Telling,
): string {
  const { verb, [by]: more } = comparisonOf(about.metric);
  const all =
    count === of
      ? of === 2
        ? 'both golfers'
        : `all ${countWord(of)} golfers`
      : `${countWord(count)} of ${countWord(of)} golfers`;
  return `${capitalised(`on average ${telling.the(ahead)} ${verb} ${more} than ${telling.the(behind)} for ${all}`)}${overAll(status, telling)}`;
}

function overAll(status: StatusId, telling: Telling): string {
  switch (status) {
    case 'clear':
    case 'size-uncertain':
      return '';
    case 'small':
      return `, over all of them by ${tooLittle}`;
    case 'level':
      return '; over all of them there is no difference that matters';
    case 'cannot-tell':
      return '; over all of them we cannot tell';
    case 'cause-unclear':
      return `, but we cannot say that it was ${causeOf(telling)}`;
    case 'not-confirmed':
      return ', but our checks do not confirm it';
    case 'not-judged':
      return '; over all of them we did not judge it';
  }
}

/** Why it is not drawn. */
export const oneGolfer = 'This chart takes more than one golfer.';
export const fewerThanTwoGolfers = 'Fewer than two golfers hit both.';
