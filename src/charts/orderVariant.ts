import { greatestOf } from '../stats/extremes.ts';
import { axisBelow, scaleWords } from './axisBelow.ts';
import { contenderMark } from './contenderMarks.ts';
import { leftOutKey, namesKey, signKey } from './keys.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import type { Tick } from './gapScale.ts';
import type { OrderInput } from './orderInput.ts';
import { lineBetween, lineSample } from './outlineSigns.ts';
import type { Part } from './part.ts';
import { renderParts } from './renderParts.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import { shotMarks } from './shotMarks.ts';
import type { Stretch } from './signs.ts';
import { stepOver, stepsBetween, tickText } from './steps.ts';
import { truePlaces } from './truePlaces.ts';
import { heightOf, numberRoom, uprightRules, uprightWords, type PlotPlace } from './upright.ts';

/** What one variant shows, with the image's name. */
type OrderDrawing = Omit<OrderInput, 'question' | 'subject' | 'finding' | 'description' | 'table'> & {
  readonly name: string;
};

const plotHeights: Readonly<Record<Variant, number>> = { wide: 230, narrow: 210 };
const edge = 4;
/** Length of a trend's sample in its key, px: long enough for every pattern. */
const keyLine = 36;

/** The scale of shot numbers, which ends at the last one. */
interface NumberScale {
  readonly place: (number: number) => number;
  readonly ticks: readonly Tick[];
}

const numberScale = (last: number, { from, to }: Stretch, layout: Layout): NumberScale => {
  const step = Math.max(1, stepOver(last, layout.variant === 'wide' ? 8 : 5));
  const place = (number: number): number => from + (number / last) * (to - from);
  return {
    place,
    ticks: stepsBetween(step, last, step).map((number) => ({
      x: place(number),
      text: tickText(number, step),
    })),
  };
};

interface OrderScales {
  readonly along: NumberScale;
  readonly up: RoundScale;
}

const orderScales = (
  { shots, trends, roundIn }: OrderDrawing,
  layout: Layout,
): OrderScales & Pick<PlotPlace, 'left' | 'right'> => {
  const height = plotHeights[layout.variant];
  const ends = trends.flatMap(({ from, to }) => [from, to]);
  const values = [...shots, ...ends].map(({ value }) => value);
  const up = roundScale(values, { from: 8, to: height - 8 }, layout, roundIn);
  const left = numberRoom(up, layout);
  const right = layout.width - edge;
  const last = Math.max(5, greatestOf([0, ...shots.map(({ number }) => number)]));
  return { along: numberScale(last, { from: left, to: right - 8 }, layout), up, left, right };
};

const plotPart = (drawing: OrderDrawing, layout: Layout, top: number): Part => {
  const { left, right, ...scales } = orderScales(drawing, layout);
  const height = plotHeights[layout.variant];
  const place: PlotPlace = { left, right, top, bottom: top + height };
  const heightAt = heightOf(scales.up, place);
  const placed = [...drawing.shots]
    .sort((one, other) => Number(other.leftOut) - Number(one.leftOut) || one.contender - other.contender)
    .map(({ number, value, contender, leftOut }) => ({
      x: scales.along.place(number),
      y: heightAt(value),
      mark: contenderMark(contender),
      leftOut,
    }));
  const axis = axisBelow(drawing.numberAxis, scales.along.ticks, layout, place.bottom, {
    from: left,
    to: right,
  });
  return {
    height: height + axis.height,
    marks: [
      ...uprightRules(scales.up, place, layout),
      ...axis.marks,
      ...drawing.trends.map(({ contender, from, to }) =>
        lineBetween(
          { x: scales.along.place(from.number), y: heightAt(from.value) },
          { x: scales.along.place(to.number), y: heightAt(to.value) },
          contenderMark(contender),
        ),
      ),
      ...truePlaces([placed]).flatMap(shotMarks),
    ],
  };
};

/** One variant of *Shots in order* as SVG text. */
export const orderVariant = (drawing: OrderDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { contenders, shots, trends } = drawing;
  const leftOut = shots.find((shot) => shot.leftOut);
  return renderParts(drawing, layout, [
    (top) => namesKey(contenders, layout, top),
    (top) => uprightWords(scaleWords(drawing.axis, orderScales(drawing, layout).up), layout, top),
    (top) => plotPart(drawing, layout, top),
    ...trends.map(
      ({ contender, words }) =>
        (top: number) =>
          signKey(
            ({ y }) => [lineSample({ x: 0, y }, keyLine, contenderMark(contender))],
            words,
            layout,
            top,
            keyLine + 8,
          ),
    ),
    ...(leftOut === undefined
      ? []
      : [(top: number) => leftOutKey(drawing.leftOut, leftOut.contender, layout, top)]),
  ]);
};
