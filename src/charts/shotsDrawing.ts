import { axisBelow, scaleWords } from './axisBelow.ts';
import { contenderMark } from './contenderMarks.ts';
import { barItem, ringItem } from './gapKey.ts';
import { leftOutItem, shotItem } from './keys.ts';
import { flowKey, type KeyItem } from './flowKey.ts';
import type { Layout } from './layout.ts';
import { absentChart, drawnChart, type ShotChartWords, type MadeChart } from './madeChart.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import { headFits, shotRadius, shotsStrip, type ShotsStrip } from './shotsStrip.ts';
import { noShots } from '../prose/english/charts/shots.ts';

export interface ShotsInput extends ShotChartWords {
  /** In the order contenders are listed. */
  readonly strips: readonly ShotsStrip[];
  /** One of the units in which the scale ends on round numbers, in the unit of the values. */
  readonly roundIn: number;
  /** What the signs are called: a mark, the ring and the bar of an average; null for those that do not occur. */
  readonly key: { readonly shot: string; readonly ring: string | null; readonly bar: string | null };
  /** What the scale measures: "Carry in yards". */
  readonly axis: string;
}

/**
 * One strip a contender on one scale; a mark for every shot, moved only up and down so that none covers another; the average under
 * them. Absent without shots. Throws on values that are not finite and on a seventh contender.
 */
export function drawShots(input: ShotsInput): MadeChart {
  const drawn = refuse(input);
  const { strips, roundIn, axis, recorded } = input;
  if (drawn === 0) return absentChart(input, noShots);
  return drawnChart(input, { drawn, recorded, counted: 'shots' }, (layout) => {
    const scale = shotsScale(strips, layout, roundIn);
    const style = {
      radius: shotRadius(strips, scale),
      beside: strips.every((strip) => headFits(strip, layout)),
    };
    return {
      parts: [
        (top) => flowKey(keyItems(input), layout, top),
        ...strips.map((strip) => (top: number) => shotsStrip(strip, scale, style, layout, top)),
        (top) => axisBelow(scaleWords(axis, scale), scale.ticks, layout, top),
      ],
    };
  });
}

const numbersOf = ({ shots, average }: ShotsStrip): readonly number[] => [
  ...shots.map(({ value }) => value),
  ...(average === null ? [] : [average.value]),
  ...(average?.interval ? [average.interval.low, average.interval.high] : []),
];

/** How many shots there are to draw. */
function refuse({ strips, recorded }: ShotsInput): number {
  let drawn = 0;
  for (const strip of strips) {
    const { contender, shots } = strip;
    contenderMark(contender.index);
    const broken = numbersOf(strip).find((value) => !Number.isFinite(value));
    if (broken !== undefined)
      throw new Error(`${contender.label} has the value ${broken}, which cannot be drawn.`);
    drawn += shots.length;
  }
  if (drawn > recorded) throw new Error(`${drawn} shots to draw but only ${recorded} recorded.`);
  return drawn;
}

/** Room at either end for marks and half a number, px. */
const inset = 14;

/** The scale from a round number below every shot and average to one above, one for all strips. */
const shotsScale = (strips: readonly ShotsStrip[], layout: Layout, roundIn: number): RoundScale =>
  roundScale(strips.flatMap(numbersOf), { from: inset, to: layout.width - inset }, layout, roundIn);

const keyItems = ({ strips, key, leftOut }: ShotsInput): readonly KeyItem[] => {
  const indices = [...new Set(strips.map(({ contender }) => contender.index))];
  const withLeftOut = strips.find(({ shots }) => shots.some((shot) => shot.leftOut));
  return [
    shotItem(indices, key.shot),
    ...(key.ring === null ? [] : [ringItem(key.ring)]),
    ...(key.bar === null ? [] : [barItem(key.bar)]),
    ...(withLeftOut === undefined ? [] : [leftOutItem(withLeftOut.contender.index, leftOut)]),
  ];
};
