import type { Interval, MetricFindings, PairFindings } from '../findings/findings.ts';
import { printAt } from '../prose/numbers.ts';
import { gapNumbers } from '../prose/pairSentence.ts';
import { toReader } from '../prose/readerUnits.ts';
import { toldGap, type Telling } from '../prose/telling.ts';
import type { GapRow } from './hittersInput.ts';

/** A gap of a pair as a row of bars: `a` minus `b` in the reader's unit, with its words. */
export function gapRow(
  name: string,
  gap: { readonly estimate: number | null; readonly ci: Interval | null },
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): GapRow {
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const own: PairFindings = { ...pair, ...gap };
  const told = toldGap(own, metric, telling);
  return {
    name,
    estimate: gap.estimate === null ? null : read(gap.estimate),
    interval: gap.ci === null ? null : { low: read(gap.ci[0]), high: read(gap.ci[1]) },
    figure: told === null ? '' : printAt(told.gap, told.step),
    words: told === null ? 'too few shots to say' : gapNumbers(own, metric, telling),
  };
}
