import { greatestOf } from '../stats/extremes.ts';
import { axisBelow, scaleWords } from './axisBelow.ts';
import { contenderMark } from './contenderMarks.ts';
import type { ContenderName } from './contenderName.ts';
import { leftOutKey, namesKey, signKey } from './keys.ts';
import type { Layout, Variant } from './layout.ts';
import { absentChart, drawnChart, type ShotChartWords, type MadeChart } from './madeChart.ts';
import type { Tick } from './gapScale.ts';
import { lineBetween, lineSample } from './outlineSigns.ts';
import type { Part } from './part.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import { shotMarks } from './shotMarks.ts';
import type { Stretch } from './signs.ts';
import { stepOver, stepsBetween, tickText } from './steps.ts';
import { truePlaces } from './truePlaces.ts';
import { heightOf, numberRoom, uprightRules, uprightWords, type PlotPlace } from './upright.ts';
import { noShots } from '../prose/english/charts/shots.ts';

/** One shot of a session. */
interface OrderedShot {
  /** Place in the session, from 1. */
  readonly number: number;
  /** In the unit the reader sees. */
  readonly value: number;
  /** Place of its contender in the report's list, from 0. */
  readonly contender: number;
  readonly leftOut: boolean;
}

/** The straight line through the shots of one contender, ends in shots and in the unit of the shots. */
export interface OrderTrend {
  /** Place of its contender in the report's list, from 0. */
  readonly contender: number;
  readonly from: { readonly number: number; readonly value: number };
  readonly to: { readonly number: number; readonly value: number };
  /** What the line says: "Heron: no clear trend in carry, give or take 4 yards in ten shots". */
  readonly words: string;
}

export interface OrderInput extends ShotChartWords {
  /** In the order contenders are listed; those without a shot too. */
  readonly contenders: readonly ContenderName[];
  readonly shots: readonly OrderedShot[];
  /** Of contenders with shots enough for one. */
  readonly trends: readonly OrderTrend[];
  /** One of the units in which the scale up the side ends on round numbers, in the unit of the values. */
  readonly roundIn: number;
  /** What the scale up the side measures: "Carry in yards". */
  readonly axis: string;
  /** What the scale along the foot counts: "Shot number". */
  readonly numberAxis: string;
}

/**
 * Value over place in the session, a mark for every shot at its true place, a line of trend for each contender over its own shots.
 * Absent without shots. Throws on values that are not finite, a trend out of order, a shot of nobody, a seventh contender.
 */
export function drawOrder(input: OrderInput): MadeChart {
  refuse(input);
  const { contenders, shots, trends, recorded } = input;
  if (shots.length === 0) return absentChart(input, noShots);
  const leftOut = shots.find((shot) => shot.leftOut);
  return drawnChart(input, { drawn: shots.length, recorded, counted: 'shots' }, (layout) => ({
    parts: [
      (top) => namesKey(contenders, layout, top),
      (top) => uprightWords(scaleWords(input.axis, orderScales(input, layout).up), layout, top),
      (top) => plotPart(input, layout, top),
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
        : [(top: number) => leftOutKey(input.leftOut, leftOut.contender, layout, top)]),
    ],
  }));
}

function refuse({ contenders, shots, trends, recorded }: OrderInput): void {
  for (const { index } of contenders) contenderMark(index);
  for (const { number, value, contender } of shots) {
    if (!contenders.some(({ index }) => index === contender)) {
      throw new Error(`Shot ${number} is of contender number ${contender + 1}, who is not named.`);
    }
    if (!(Number.isFinite(value) && Number.isInteger(number) && number > 0))
      throw new Error(`Shot ${number} has the value ${value}, which cannot be drawn.`);
  }
  for (const { contender, from, to } of trends) {
    contenderMark(contender);
    if (!(from.number < to.number && [from.value, to.value].every(Number.isFinite)))
      throw new Error(
        `The trend from ${from.value} at shot ${from.number} to ${to.value} at shot ${to.number} cannot be drawn.`,
      );
  }
  if (shots.length > recorded)
    throw new Error(`${shots.length} shots to draw but only ${recorded} recorded.`);
}

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
  { shots, trends, roundIn }: OrderInput,
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

const plotPart = (drawing: OrderInput, layout: Layout, top: number): Part => {
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
