import type { MetricFindings } from '../findings/findings.ts';
import type { Contender } from '../intake/authored/contender.ts';
import { comparativeOf } from '../prose/comparatives.ts';
import { dateInWords } from '../prose/date.ts';
import { mattersText, printedLimits } from '../prose/pairSentence.ts';
import { toReader, unitFor, unitWord, withUnit } from '../prose/readerUnits.ts';
import { toldGap, type Telling } from '../prose/telling.ts';
import { listed } from '../prose/words.ts';
import { metrics } from '../trade/metrics.ts';
import type { Figure } from './figure.ts';
import { priceChart } from './price.ts';
import type { PricedGap } from './priceInput.ts';

const id = 'price';
const question = 'What does the gap cost?';

/** *Price and yards*: price difference against the gap, for clear gaps of the dearer one only. */
export function priceFigure(
  metric: MetricFindings,
  contenders: readonly Contender[],
  telling: Telling,
): Figure {
  const priced = contenders.filter(({ price }) => price !== undefined);
  const currencies = new Set(priced.map(({ price }) => price?.currency));
  if (priced.length < 2)
    return { kind: 'absent', id, question, why: 'Not drawn: it takes a price for two of them or more.' };
  if (currencies.size > 1)
    return { kind: 'absent', id, question, why: 'Not drawn: the prices are in different currencies.' };
  const [currency = ''] = currencies;
  const unit = unitFor(metric.id, telling.system);
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const pairs = metric.pairs.flatMap((pair): (PricedGap & { readonly fit: string })[] => {
    const [a, b] = [pair.a, pair.b].map(
      (contender) => priced.find(({ id: own }) => own === contender)?.price?.amount,
    );
    const clear = pair.verdict === 'clear' && pair.credit === 'contender';
    if (!clear || a === undefined || b === undefined || pair.estimate === null || pair.ci === null) return [];
    const flip = a >= b ? 1 : -1;
    const gap = toldGap(pair, metric, telling);
    const [low = 0, high = 0] = pair.ci.map((end) => read(end) * flip).sort((x, y) => x - y);
    if (gap === null || low <= 0) return [];
    const limits = printedLimits(gap);
    const [dearer, other] = a >= b ? [pair.a, pair.b] : [pair.b, pair.a];
    const more = Math.abs(a - b);
    const fit = `${limits.lower} to ${withUnit(limits.upper, unit)} ${comparativeOf(metric.id).more}`;
    return [
      {
        name: `${telling.nameOf(dearer)} and ${telling.nameOf(other)}`,
        price: more,
        estimate: read(pair.estimate) * flip,
        low,
        high,
        fit,
        words: `${telling.nameOf(dearer)} costs ${more} ${currency} more than ${telling.nameOf(other)}; for that, ${fit} would fit.`,
      },
    ];
  });
  if (pairs.length === 0)
    return {
      kind: 'absent',
      id,
      question,
      why: 'Not drawn: there is no clear gap in favour of a dearer one to put a price on.',
    };
  const matters = read(metric.matters);
  const dates = listed(
    [...new Set(priced.flatMap(({ price }) => price?.on ?? []))].toSorted().map((day) => dateInWords(day)),
  );
  return priceChart({
    id,
    question,
    subject: `Price difference and gap in ${metrics[metric.id].name}`,
    finding: `${pairs.map(({ words }) => words).join(' ')} Bar: every gap that would fit. Only clear gaps are shown. Prices of ${dates}.`,
    description: pairs.map(({ words }) => words).join(' '),
    table: {
      caption: `Price differences (${currency}) and gaps`,
      head: ['Pair, dearer first', `Price difference (${currency})`, 'Gap that would fit'],
      rows: pairs.map(({ name, price, fit }) => [name, String(price), fit]),
    },
    pairs,
    matters,
    gapAxis: `${unitWord(unit)} ${comparativeOf(metric.id).more}`.trim(),
    priceAxis: `Price difference in ${currency}`,
    legend: `Under ${mattersText({ matters, unit })}: too small to matter`,
  });
}
