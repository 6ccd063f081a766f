import { greatestOf } from '../stats/extremes.ts';
import { axisBelow, scaleWords } from './axisBelow.ts';
import { contenderMark } from './contenderMarks.ts';
import { leftOutKey, namesKey, signKey } from './keys.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import type { Tick } from './outwardScale.ts';
import type { OrderInput, OrderTrend } from './orderInput.ts';
import type { Part } from './part.ts';
import { renderParts } from './renderParts.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import { shotMarks } from './shotMarks.ts';
import { lines, type Stretch } from './signs.ts';
import { stepOver, stepsBetween, tickText } from './steps.ts';
import { truePlaces } from './truePlaces.ts';
import { heightOf, numberRoom, uprightRules, uprightWords, type PlotPlace } from './upright.ts';

/** What one variant shows, with the image's name. */
export type OrderDrawing = Omit<OrderInput, 'question' | 'subject' | 'finding' | 'description' | 'table'> & {
  readonly name: string;
};

const plotHeights: Readonly<Record<Variant, number>> = { wide: 230, narrow: 210 };
/** From the last shot to the bar at the end of the trend, and from there to the edge, px. */
const barInset = 12;
const edge = 4;

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
  { shots, trend, roundIn }: OrderDrawing,
  layout: Layout,
): OrderScales & Pick<PlotPlace, 'left' | 'right'> => {
  const height = plotHeights[layout.variant];
  const values = shots.map(({ value }) => value);
  if (trend !== null) {
    values.push(trend.from.value, trend.to.value, trend.interval.low, trend.interval.high);
  }
  const up = roundScale(values, { from: 8, to: height - 8 }, layout, roundIn);
  const left = numberRoom(up, layout);
  const right = layout.width - (trend === null ? 0 : barInset + edge);
  const numbers = [0, ...shots.map(({ number }) => number), trend?.to.number ?? 0];
  const last = Math.max(5, greatestOf(numbers));
  return { along: numberScale(last, { from: left, to: right - 8 }, layout), up, left, right };
};

/** Line through the shots, its bar beyond the last one. */
const trendMarks = (trend: OrderTrend, { along, up }: OrderScales, place: PlotPlace): Part['marks'] => {
  const height = heightOf(up, place);
  const [start, end] = [along.place(trend.from.number), along.place(trend.to.number)];
  const barX = place.right + barInset;
  // The line goes on to its bar, as straight as before.
  const slope = (height(trend.to.value) - height(trend.from.value)) / Math.max(end - start, 1);
  const barY = height(trend.to.value) + slope * (barX - end);
  const [low, high] = [height(trend.interval.low), height(trend.interval.high)];
  const moved = barY - height(trend.to.value);
  return [
    lines([{ x1: start, y1: height(trend.from.value), x2: barX, y2: barY }], 'ink', 2),
    lines([{ x1: barX, y1: low + moved, x2: barX, y2: high + moved }], 'ink', 2.5),
  ];
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
      ...(drawing.trend === null ? [] : trendMarks(drawing.trend, scales, place)),
      ...truePlaces([placed]).flatMap(shotMarks),
    ],
  };
};

/** One variant of *Shots in order* as SVG text. */
export const orderVariant = (drawing: OrderDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { contenders, shots, trend } = drawing;
  const leftOut = shots.find((shot) => shot.leftOut);
  return renderParts(drawing, layout, [
    (top) => namesKey(contenders, layout, top),
    (top) => uprightWords(scaleWords(drawing.axis, orderScales(drawing, layout).up), layout, top),
    (top) => plotPart(drawing, layout, top),
    ...(trend === null
      ? []
      : [
          (top: number) =>
            signKey(
              ({ x, y }) => [
                lines([{ x1: 0, y1: y, x2: x + 4, y2: y }], 'ink', 2),
                lines([{ x1: x + 4, y1: y - 6, x2: x + 4, y2: y + 6 }], 'ink', 2.5),
              ],
              trend.words,
              layout,
              top,
            ),
        ]),
    ...(leftOut === undefined
      ? []
      : [(top: number) => leftOutKey(drawing.leftOut, leftOut.contender, layout, top)]),
  ]);
};
