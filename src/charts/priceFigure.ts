import type { MetricFindings } from '../findings/findings.ts';
import type { Contender } from '../intake/authored/contender.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { moneyWords, priceSentence, priceWords } from '../prose/english/charts/price.ts';
import { differenceCells, estimateAndRange } from '../prose/english/charts/ranges.ts';
import { printingOf } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { bandOf } from './bandOf.ts';
import { absentFigure, figureHead, type Figure } from './figure.ts';
import { priceChart } from './price.ts';
import { turnedPair } from './turnedPair.ts';

/** *Price and yards*: price difference against the difference, for clear ones of the dearer one only. */
export function priceFigure(
  metric: MetricFindings,
  contenders: readonly Contender[],
  telling: Telling,
): Figure {
  const head = figureHead('price', { of: 'metric', metric: metric.id }, telling.findings);
  const priced = contenders.flatMap(({ id, price }) => (price === undefined ? [] : [{ id, ...price }]));
  const [currency = '', ...others] = new Set(priced.map((one) => one.currency));
  if (priced.length < 2) return absentFigure(head, notDrawn.onePrice);
  if (others.length > 0) return absentFigure(head, notDrawn.currencies);
  const printing = printingOf(metric, telling);
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const priceOf = (index: number): number | undefined =>
    priced.find(({ id }) => id === telling.findings.contenders[index]?.id)?.amount;
  const pairs = metric.pairs.flatMap((pair) => {
    const turned = turnedPair(pair, metric, telling);
    const { a, b } = turned;
    const [dearer, cheaper] = [priceOf(a.index), priceOf(b.index)];
    if (pair.status !== 'clear' || pair.estimate === null || pair.ci === null) return [];
    if (dearer === undefined || cheaper === undefined || dearer < cheaper) return [];
    const [estimate, ci] = [turned.estimate(pair.estimate), turned.ci(pair.ci)];
    const price = dearer - cheaper;
    const money = moneyWords(price, currency);
    const range = estimateAndRange({ first: a.label, second: b.label, estimate, ci }, printing);
    return [
      {
        name: `${a.label} and ${b.label}`,
        ...{ price, estimate: read(estimate), low: read(ci[0]), high: read(ci[1]) },
        words: priceSentence({ dearer: a.label, cheaper: b.label, money, range }, metric),
        cells: differenceCells(estimate, ci, printing),
      },
    ];
  });
  if (pairs.length === 0) return absentFigure(head, notDrawn.nothingToPrice);
  const { axis, matters, legend } = bandOf(metric, telling);
  const { tableCaption, tableHead, ...words } = priceWords(
    metric,
    {
      currency,
      days: [...new Set(priced.map(({ on }) => on))].toSorted(),
      sentences: pairs.map(({ words: sentence }) => sentence),
      judged: metric.judgedTogether,
    },
    telling,
  );
  return priceChart({
    ...head,
    ...words,
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: pairs.map(({ name, price, cells }) => [name, String(price), ...cells]),
    },
    pairs,
    matters,
    legend,
    gapAxis: axis,
  });
}
