import type { MetricFindings, PairFindings } from '../../../findings/findings.ts';
import { metrics, type MetricId } from '../../../trade/metrics.ts';
import { shortUnit, unitFor } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, counted, countWord, listed } from '../../words.ts';
import { comparedNames, inBrackets } from './ranges.ts';

/** The words of *Did leaving shots out change it?*; `changed` names the pairs whose answer changes. */
export function withAndWithoutWords(
  metric: MetricFindings,
  more: string,
  { leftOut, changed }: { readonly leftOut: number; readonly changed: readonly string[] },
  telling: Telling,
) {
  const { name } = metrics[metric.id];
  const inUnit = inBrackets(shortUnit(unitFor(metric.id, telling.system)));
  const names = comparedNames(telling);
  const shows =
    changed.length === 0
      ? `With every shot counted the answer in ${name} stays the same.`
      : `With every shot counted the answer in ${name} changes${metric.pairs.length > 1 ? ` for ${listed(changed)}` : ''}.`;
  return {
    subject: `Difference in average ${name} between ${names} with and without the ${countWord(leftOut)} left out`,
    found: [`We left out ${counted(leftOut, 'shot')}.`, shows],
    signs: [],
    shows,
    numbers: `${name} differences with and without`,
    tableCaption: `Differences in average ${name}${inUnit} with and without the shots left out. Positive: the first-named ${more}.`,
    tableHead: [
      'Pair',
      `All shots${inUnit}`,
      'Likely range, from',
      'to',
      `Without those left out${inUnit}`,
      'Likely range, from',
      'to',
      'Answer',
    ],
    allShots: (shots: number): string => `All ${shots} shots`,
    kept: `Without the ${leftOut === 1 ? 'one' : countWord(leftOut)} left out`,
  };
}

/** Over the two rows of a pair. */
export const eitherWay = (answer: string, same: boolean): string =>
  `${answer} ${same ? 'The same with every shot counted.' : 'With every shot counted the answer changes.'}`;

/** The range in the words of a row that stands alone in a description. */
export const bothRanges = (answer: string, all: string, kept: string): string =>
  `${answer} All shots: ${all}. ${capitalised('without those left out')}: ${kept}.`;

/** "With every shot counted the answer in carry stays the same". */
export function leftOutFinding(
  { id, pairs }: { readonly id: MetricId; readonly pairs: readonly PairFindings[] },
  changed: readonly string[],
): string {
  const { name } = metrics[id];
  if (changed.length === 0) return `With every shot counted the answer in ${name} stays the same`;
  return `With every shot counted the answer in ${name} changes${pairs.length > 1 ? ` for ${listed(changed)}` : ''}`;
}

/** Why it is not drawn. */
export const noneLeftOut = 'No shot was left out.';
export const noPairBothWays = 'No two of them had enough shots to be judged both ways.';
