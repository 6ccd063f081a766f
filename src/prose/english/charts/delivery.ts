import type { SwingFindings, SwingPair } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { mattersText } from '../../pairSentence.ts';
import { unitFor, unitWord } from '../../readerUnits.ts';
import { swingInShort, swingUnread } from '../../swingSentences.ts';
import type { Telling } from '../../telling.ts';
import type { Printing } from '../../printSteps.ts';
import { capitalised } from '../../words.ts';
import { comparedNames, sidedRange } from './ranges.ts';

/** The words of *Was it the same swing?*; `margin` is in the reader's unit. */
export function deliveryWords(swing: SwingFindings, margin: number, telling: Telling) {
  const unit = unitFor(swing.metric, telling.system);
  const { name } = metrics[swing.metric];
  const names = comparedNames(telling);
  return {
    subject: `What differences in the swing between ${names} could be worth in ${name}`,
    found: [swingInShort(swing, telling), swingUnread(swing)].filter((words) => words !== ''),
    signs: [
      `Ring: best estimate of what a difference in the swing is worth in ${name}, by a flight model or a rule of thumb. Bar: its likely range.`,
    ],
    numbers: 'differences in the swing',
    axis: `${unitWord(unit)} it could be worth`,
    legend: `Worth under ${mattersText({ matters: margin, unit })}: the same swing, as far as it matters`,
    tableCaption: 'Differences in the swing, and what they could be worth',
    tableHead: ['Measure and pair', 'Difference and worth', 'Answer'],
  };
}

/** Beside a row: "Likely 1.1 to 2.3 mph for Long; worth likely 3 to 8 yards for Long." */
export function deliveryNumbers(
  { ci, worth }: SwingPair,
  names: { readonly first: string; readonly second: string },
  { own, priced }: { readonly own: Printing; readonly priced: Printing },
): string {
  const [differed, worthIt] = [
    sidedRange({ ...names, ci }, own),
    sidedRange({ ...names, ci: worth.ci }, priced),
  ];
  return `${capitalised(differed)}; worth ${worthIt}.`;
}
