import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { axisBelow, scaleWords } from './axisBelow.ts';
import { contenderMark } from './contenderMarks.ts';
import { absentFigure, drawnFigure, imageName, type Figure } from './figure.ts';
import { barItem, ringItem } from './gapKey.ts';
import { leftOutItem, shotItem } from './keys.ts';
import { flowKey, type KeyItem } from './flowKey.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import { renderParts } from './renderParts.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import type { ShotsInput, ShotsStrip } from './shotsInput.ts';
import { headFits, shotRadius, shotsStrip } from './shotsStrip.ts';

const numbersOf = ({ shots, average }: ShotsStrip): readonly number[] => [
  ...shots.map(({ value }) => value),
  ...(average === null ? [] : [average.value]),
  ...(average?.interval ? [average.interval.low, average.interval.high] : []),
];

const refuse = ({ strips, recorded }: ShotsInput): number => {
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
};

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

/** One variant as SVG text. */
const shotsVariant = (input: ShotsInput, variant: Variant): string => {
  const layout = layouts[variant];
  const { id, strips, roundIn, axis } = input;
  const scale = shotsScale(strips, layout, roundIn);
  const style = {
    radius: shotRadius(strips, scale),
    beside: strips.every((strip) => headFits(strip, layout)),
  };
  return renderParts({ id, name: imageName(input) }, layout, [
    (top) => flowKey(keyItems(input), layout, top),
    ...strips.map((strip) => (top: number) => shotsStrip(strip, scale, style, layout, top)),
    (top) => axisBelow(scaleWords(axis, scale), scale.ticks, layout, top),
  ]);
};

/**
 * *All the shots.* One strip a contender on one scale; a mark for every shot, moved only up and down so that none covers another; the
 * average under them. Absent without shots. Throws on values that are not finite and on a seventh contender.
 */
export const shotsChart = (input: ShotsInput): Figure => {
  const drawn = refuse(input);
  if (drawn === 0) return absentFigure(input, notDrawn.noShots);
  return drawnFigure(input, { drawn, recorded: input.recorded, counted: 'shots' }, (variant) =>
    shotsVariant(input, variant),
  );
};
