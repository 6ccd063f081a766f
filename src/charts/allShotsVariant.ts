import type { AllShotsInput } from './allShotsInput.ts';
import { contenderMark } from './contenderMarks.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import { stack, type Part } from './part.ts';
import { renderChart } from './renderChart.ts';
import { headFits, shotRadius, shotsStrip } from './shotsStrip.ts';
import { shotsScale, type ShotsScale } from './shotsScale.ts';
import { label, leftOutMarks, lines, texts } from './signs.ts';
import { textWidth, wrapText } from './textWidth.ts';

/** What one variant shows, with the image's name. */
export type AllShotsDrawing = Pick<AllShotsInput, 'id' | 'strips' | 'axis' | 'leftOut'> & {
  readonly name: string;
};

/** Numbered axis; words below say the unit, and where the scale starts if not at 0. */
const axisPart = (axis: string, scale: ShotsScale, layout: Layout, top: number): Part => {
  const { small, width } = layout;
  const clamped = (x: number, words: string): number => {
    const half = textWidth(words, small.size, small.weight) / 2;
    return Math.min(Math.max(x, half), width - half);
  };
  const words =
    scale.cut === null ? axis : `${axis}; the scale runs from ${scale.cut.from} to ${scale.cut.to}`;
  const split = wrapText(words, small.size, small.weight, width);
  return {
    height: 42 + (split.length - 1) * 19,
    marks: [
      lines([{ x1: 0, y1: top, x2: width, y2: top }], 'axis', 1),
      lines(
        scale.ticks.map(({ x }) => ({ x1: x, y1: top, x2: x, y2: top + 6 })),
        'axis',
        1,
      ),
      ...texts([
        ...scale.ticks.map(({ x, text }) => label(small, 'middle', clamped(x, text), top + 21, text)),
        ...split.map((line, index) => label(small, 'start', 0, top + 42 + index * 19, line)),
      ]),
    ],
  };
};

/** What a hollow mark means, with the mark of the first contender that has one. */
const leftOutPart = (words: string, index: number, { small, width }: Layout, top: number): Part => {
  const split = wrapText(words, small.size, small.weight, width - 22);
  return {
    height: 24 + (split.length - 1) * 19,
    marks: [
      ...leftOutMarks([{ x: 8, y: top + 19 }], contenderMark(index), 4.5),
      ...texts(split.map((line, row) => label(small, 'start', 22, top + 24 + row * 19, line))),
    ],
  };
};

/** One variant of *All the shots* as SVG text. */
export const allShotsVariant = (drawing: AllShotsDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { strips, axis } = drawing;
  const scale = shotsScale(strips, layout);
  const style = {
    radius: shotRadius(strips, scale),
    beside: strips.every((strip) => headFits(strip, layout)),
  };
  const leftOut = strips.find(({ shots }) => shots.some((shot) => shot.leftOut));
  const parts = stack(1, [
    ...strips.map((strip) => (top: number) => shotsStrip(strip, scale, style, layout, top)),
    (top) => axisPart(axis, scale, layout, top),
    ...(leftOut === undefined
      ? []
      : [(top: number) => leftOutPart(drawing.leftOut, leftOut.contender.index, layout, top)]),
  ]);
  return renderChart({
    prefix: `${drawing.id}-${variant}`,
    name: drawing.name,
    width: layout.width,
    height: Math.ceil(parts.height) + 8,
    marks: parts.marks,
  });
};
