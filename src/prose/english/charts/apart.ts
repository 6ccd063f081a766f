import type { MetricFindings } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { shortUnit, unitFor } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { countWord } from '../../words.ts';
import { comparedNames, differenceHeads, inBrackets } from './ranges.ts';

/** The words of *How far apart?*; `more` is what the first-named of a pair is, `judged` how many pairs were judged together. */
export function apartWords(metric: MetricFindings, more: string, judged: number, telling: Telling) {
  const { name } = metrics[metric.id];
  const level = metric.pairs[0]?.level ?? 0.95;
  const inUnit = inBrackets(shortUnit(unitFor(metric.id, telling.system)));
  const held = `p is held against ${Number((1 - level).toFixed(3))}${judged > 1 ? ` and allows for all ${countWord(judged)} pairs` : ''}.`;
  return {
    subject: `${metric.pairs.length > 1 ? 'Differences' : 'Difference'} in average ${name} between ${comparedNames(telling)}`,
    found: [],
    signs: [],
    numbers: `${name} differences`,
    tableCaption: `Differences in average ${name}${inUnit}. Positive: the first-named ${more}. ${held}`,
    tableHead: ['Pair', ...differenceHeads(inUnit), 'p', 'Answer'],
  };
}

/** A p value as it is printed: two digits, and never a plain 0 or 1. */
export function printedP(p: number): string {
  if (p < 0.001) return 'under 0.001';
  return p > 0.99 ? 'over 0.99' : p.toPrecision(2);
}
