import { answersFit, apartRow, type ApartPair } from './apartRow.ts';
import { gapAxis } from './gapAxis.ts';
import { gapKey } from './gapKey.ts';
import { gapScale } from './gapScale.ts';
import type { GapWords } from './gapWords.ts';
import type { Layout } from './layout.ts';
import type { ChartParts } from './madeChart.ts';
import { hatch } from './signs.ts';

interface ApartRows extends GapWords {
  readonly pairs: readonly ApartPair[];
}

/** Room at either end of the scale, px. */
const inset = 4;

/** A row a pair, the first-named to the right; the bar is thick where the gap would matter, and not filled where its cause is open. */
export const apartRows = (
  { pairs, matters, bandWords, unit, ends, foot, key }: ApartRows,
  layout: Layout,
): ChartParts => {
  const gaps = pairs.flatMap((pair) => (pair.kind === 'judged' ? [pair.low, pair.high] : []));
  const scale = gapScale(gaps, matters, unit, layout, { from: inset, to: layout.width - inset });
  const style = { matters, scale, beside: answersFit(pairs, layout) };
  const first = pairs.findIndex(({ kind }) => kind === 'judged');
  return {
    parts: [
      (top) => gapKey(key, layout, top),
      ...pairs.map(
        (pair, index) => (top: number) =>
          apartRow(pair, matters > 0 && index === first ? bandWords : null, style, layout, top),
      ),
      (top) => gapAxis({ ends, foot, scale, layout }, top),
    ],
    behind: matters > 0 ? [hatch] : [],
  };
};
