import type { MetricFindings } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { shortUnit, unitFor } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { countWord } from '../../words.ts';
import { onlyThese } from '../golfers.ts';
import { differenceHeads, inBrackets } from './ranges.ts';

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
