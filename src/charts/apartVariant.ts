import type { ApartPair, GapWords } from './apartInput.ts';
import { answersFit, apartRow } from './apartRow.ts';
import { gapAxis } from './gapAxis.ts';
import { gapKey } from './gapKey.ts';
import { gapScale } from './gapScale.ts';
import { layouts, type Variant } from './layout.ts';
import { renderParts } from './renderParts.ts';
import { hatch } from './signs.ts';

/** What one variant shows: the pairs drawn and the image's name. */
interface ApartDrawing extends GapWords {
  readonly id: string;
  readonly name: string;
  readonly pairs: readonly ApartPair[];
}

/** Room at either end of the scale, px. */
const inset = 4;

/** One variant of *How far apart?* as SVG text. */
export const apartVariant = (drawing: ApartDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { pairs, matters, bandWords, unit, ends, foot, key } = drawing;
  const gaps = pairs.flatMap((pair) => (pair.kind === 'judged' ? [pair.low, pair.high] : []));
  const scale = gapScale(gaps, matters, unit, layout, { from: inset, to: layout.width - inset });
  const style = { matters, scale, beside: answersFit(pairs, layout) };
  const first = pairs.findIndex(({ kind }) => kind === 'judged');
  return renderParts(
    drawing,
    layout,
    [
      (top) => gapKey(key, layout, top),
      ...pairs.map(
        (pair, index) => (top: number) =>
          apartRow(pair, matters > 0 && index === first ? bandWords : null, style, layout, top),
      ),
      (top) => gapAxis({ ends, foot, scale, layout }, top),
    ],
    matters > 0 ? [hatch] : [],
  );
};
