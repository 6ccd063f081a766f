import type { MetricFindings } from '../findings/findings.ts';
import { luckFinding, luckWords } from '../prose/english/charts/luck.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { pairAnswer } from '../prose/pairAnswer.ts';
import { printDifference, printingOf, printSize } from '../prose/printSteps.ts';
import { toReader, unitsIn } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { absentFigure, figureHead, type Figure } from './figure.ts';
import { luckChart } from './luck.ts';
import { widestPair } from './widestPair.ts';

/** *Chance alone*: how far apart equal contenders come, and the pair that came farthest apart. */
export function luckFigure(metric: MetricFindings, telling: Telling): Figure {
  const { findings } = telling;
  const widest = widestPair(metric);
  if (metric.luck === null || widest === null)
    return absentFigure(figureHead('luck', { of: 'metric', metric: metric.id }, findings), notDrawn.noChance);
  const { a, b } = widest.pair;
  const head = figureHead('luck', { of: 'pair', metric: metric.id, a, b }, findings);
  const printing = printingOf(metric, telling);
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const { average, upTo } = metric.luck;
  const printed = {
    average: printSize(average, printing),
    upTo: printSize(upTo, printing),
    seen: printDifference(widest.estimate, printing),
  };
  const words = luckWords(metric, widest.pair, printed, printing, telling);
  if (words === null) return absentFigure(head, notDrawn.noChance);
  const { byChance, seen, ...rest } = words;
  return luckChart({
    ...head,
    ...rest,
    finding: luckFinding(printed, pairAnswer(widest.pair, metric, findings.design), printing, telling),
    luck: { average: read(average), upTo: read(upTo), words: byChance },
    seen: { gap: read(widest.estimate), words: seen },
    roundIn: unitsIn(telling.system, metric.id, telling.scalesIn),
  });
}
