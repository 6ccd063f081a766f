import type { MetricFindings } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { comparisonOf } from '../comparisons.ts';
import { dateInWords } from '../../date.ts';
import { shortUnit, unitFor } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { listed } from '../../words.ts';
import { differenceHeads, inBrackets, likelyRange } from './ranges.ts';

const signs: Readonly<Record<string, string>> = { GBP: '£', USD: '$', EUR: '€' };

/** "£27", "27 SEK". */
export const moneyWords = (amount: number, currency: string): string => {
  const sign = signs[currency];
  return sign === undefined ? `${amount} ${currency}` : `${sign}${amount}`;
};

/** The words of *What does the difference cost?*. */
export function priceWords(
  metric: MetricFindings,
  {
    currency,
    days,
    sentences,
    judged,
  }: {
    readonly currency: string;
    readonly days: readonly string[];
    readonly sentences: readonly string[];
    readonly judged: number;
  },
  telling: Telling,
) {
  const { name } = metrics[metric.id];
  const inUnit = inBrackets(shortUnit(unitFor(metric.id, telling.system)));
  return {
    subject: `Difference in price and in average ${name} between each dearer ${telling.noun} and a cheaper one`,
    found: sentences,
    signs: [
      `Bar: ${likelyRange(name, metric.pairs[0]?.level ?? 0.95, judged)}; only clear differences are shown.`,
      `Prices of ${listed(days.map((day) => dateInWords(day)))}.`,
    ],
    ...(sentences.length === 1 ? { shows: sentences[0] } : {}),
    description: sentences.join(' '),
    numbers: `price and ${name} differences`,
    tableCaption: `Price differences (${signs[currency] ?? currency}) and differences in average ${name}. Positive: the dearer one ${comparisonOf(metric.id).axis.more}.`,
    tableHead: [
      'Pair, dearer first',
      `Price difference (${signs[currency] ?? currency})`,
      ...differenceHeads(inUnit),
    ],
    priceAxis: `Price difference (${signs[currency] ?? currency})`,
  };
}

/** "Heron costs £27 more than Wren and carried farther: about 12 yards, likely 9 to 15." */
export function priceSentence(
  {
    dearer,
    cheaper,
    money,
    range,
  }: {
    readonly dearer: string;
    readonly cheaper: string;
    readonly money: string;
    readonly range: string;
  },
  { id }: MetricFindings,
): string {
  const { verb, more } = comparisonOf(id);
  return `${dearer} costs ${money} more than ${cheaper} and ${verb} ${more}: ${range}.`;
}
