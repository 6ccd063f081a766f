import { answerWords } from '../answerWords.ts';
import type { SwingFindings, SwingPair } from '../../../findings/findings.ts';
import { metrics, type MetricId } from '../../../trade/metrics.ts';
import { mattersWords } from '../ranges.ts';
import { unitFor } from '../../readerUnits.ts';
import { swingSummary, swingUnmeasured, type SwingSummary } from '../../swing.ts';
import type { Telling } from '../../telling.ts';
import { saySwingSummary, saySwingUnmeasured } from '../swing.ts';
import { comparedNames } from './ranges.ts';
import { capitalised, listed } from '../../words.ts';

/**
 * The words of *Was it the same swing?*; `margin` is in the reader's unit.
 *
 * @param rows each with the one first whom it would favour
 */
export function deliveryWords(
  swing: SwingFindings,
  margin: number,
  rows: readonly (readonly [first: string, second: string])[],
  telling: Telling,
) {
  const [only, ...others] = new Map(rows.map((pair) => [JSON.stringify(pair), pair])).values();
  const [first, second] = only === undefined || others.length > 0 ? ['the first', 'the second'] : only;
  const unit = unitFor(swing.metric, telling.system);
  const { name } = metrics[swing.metric];
  const names = comparedNames(telling);
  return {
    subject: `What differences in the swing between ${names} could be worth in ${name}`,
    found: [saySwingSummary(swingSummary(swing), telling), saySwingUnmeasured(swingUnmeasured(swing))].filter(
      (words) => words !== '',
    ),
    signs: ['What a difference in the swing is worth was calculated, by a flight model or a rule of thumb.'],
    numbers: 'differences in the swing',
    bandWords: `the same swing: worth under ${mattersWords({ matters: margin, unit })}`,
    ends: { left: `in favour of ${second}`, right: `in favour of ${first}` },
    foot: `What the difference in the swing could be worth in ${name}.`,
    key: {
      ring: 'best estimate',
      bar: 'likely range',
      thick: 'large enough to matter',
      open: null,
      filled: true,
    },
    tableCaption: 'Differences in the swing, and what they could be worth',
    tableHead: ['Measure and pair', 'Difference and worth', 'Answer'],
  };
}

/** "Club speed: Heron and Wren". */
export const swingRowName = (measure: string, a: string, b: string): string => `${measure}: ${a} and ${b}`;

/** The answer at the end of a row. */
export const swingRowAnswers: Readonly<Record<Exclude<SwingPair['answer'], 'not-known'>, string>> = {
  same: 'The same, as far as it matters',
  different: 'Not the same',
  'cannot-tell': answerWords['cannot-tell'].title,
};

/** What all measures together say of the swing. */
export function swingFinding(summary: SwingSummary): string {
  const names = (ids: readonly MetricId[]): string => listed(ids.map((id) => metrics[id].name));
  switch (summary.kind) {
    case 'swing-too-few':
      return 'There are too few readings of the swing to compare it';
    case 'swing-differed':
      return capitalised(`${names(summary.measures)} differed by enough to matter`);
    case 'swing-same':
      return 'The swing was the same, as far as we could measure it';
    case 'swing-cannot-tell':
      return 'We cannot tell whether the swing was the same';
  }
}

/** Why it is not drawn. */
export const noSwingColumns =
  'This chart takes one golfer and a column for club speed, path, face or attack.';
export const nothingPriced = 'Nothing of the swing was recorded that can be put into distance.';
