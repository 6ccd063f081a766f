import type { AllShotsInput } from './allShotsInput.ts';
import { axisBelow, scaleWords } from './axisBelow.ts';
import { leftOutKey } from './keys.ts';
import { layouts, type Variant } from './layout.ts';
import { renderParts } from './renderParts.ts';
import { headFits, shotRadius, shotsStrip } from './shotsStrip.ts';
import { shotsScale } from './shotsScale.ts';

/** What one variant shows, with the image's name. */
export type AllShotsDrawing = Pick<AllShotsInput, 'id' | 'strips' | 'roundIn' | 'axis' | 'leftOut'> & {
  readonly name: string;
};

/** One variant of *All the shots* as SVG text. */
export const allShotsVariant = (drawing: AllShotsDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { strips, roundIn, axis } = drawing;
  const scale = shotsScale(strips, layout, roundIn);
  const style = {
    radius: shotRadius(strips, scale),
    beside: strips.every((strip) => headFits(strip, layout)),
  };
  const leftOut = strips.find(({ shots }) => shots.some((shot) => shot.leftOut));
  return renderParts(drawing, layout, [
    ...strips.map((strip) => (top: number) => shotsStrip(strip, scale, style, layout, top)),
    (top) => axisBelow(scaleWords(axis, scale), scale.ticks, layout, top),
    ...(leftOut === undefined
      ? []
      : [(top: number) => leftOutKey(drawing.leftOut, leftOut.contender.index, layout, top)]),
  ]);
};
