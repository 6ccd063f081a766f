import type { SwingFindings } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { mattersWords } from '../ranges.ts';
import { unitFor, unitWord } from '../../readerUnits.ts';
import { swingSummary, swingUnmeasured } from '../../swing.ts';
import type { Telling } from '../../telling.ts';
import { saySwingSummary, saySwingUnmeasured } from '../swing.ts';
import { comparedNames } from './ranges.ts';

/** The words of *Was it the same swing?*; `margin` is in the reader's unit. */
export function deliveryWords(swing: SwingFindings, margin: number, telling: Telling) {
  const unit = unitFor(swing.metric, telling.system);
  const { name } = metrics[swing.metric];
  const names = comparedNames(telling);
  return {
    subject: `What differences in the swing between ${names} could be worth in ${name}`,
    found: [saySwingSummary(swingSummary(swing), telling), saySwingUnmeasured(swingUnmeasured(swing))].filter(
      (words) => words !== '',
    ),
    signs: [
      `Ring: best estimate of what a difference in the swing is worth in ${name}, by a flight model or a rule of thumb. Bar: its likely range.`,
    ],
    numbers: 'differences in the swing',
    axis: `${unitWord(unit)} it could be worth`,
    legend: `Worth under ${mattersWords({ matters: margin, unit })}: the same swing, as far as it matters`,
    tableCaption: 'Differences in the swing, and what they could be worth',
    tableHead: ['Measure and pair', 'Difference and worth', 'Answer'],
  };
}
