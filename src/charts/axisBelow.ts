import type { Layout } from './layout.ts';
import type { Tick } from './gapScale.ts';
import type { Part } from './part.ts';
import type { RoundScale } from './roundScale.ts';
import { label, lines, texts, type Stretch } from './signs.ts';
import { textWidth, wrapText } from './textWidth.ts';

/** What the scale measures, and where it starts if not at 0. */
export const scaleWords = (axis: string, { cut }: RoundScale): string =>
  cut === null ? axis : `${axis}; scale from ${cut.from} to ${cut.to}`;

/** Numbered axis along the foot of a chart, or along `line` of it; words below say what it measures. */
export const axisBelow = (
  words: string,
  ticks: readonly Tick[],
  { small, width, textRoom }: Layout,
  top: number,
  line: Stretch = { from: 0, to: width },
): Part => {
  const clamped = (x: number, number: string): number => {
    const half = textWidth(number, small.size, small.weight) / 2;
    return Math.min(Math.max(x, half), width - half);
  };
  const split = wrapText(words, small.size, small.weight, textRoom);
  return {
    height: 23 + split.length * 19,
    marks: [
      lines([{ x1: line.from, y1: top, x2: line.to, y2: top }], 'axis', 1),
      lines(
        ticks.map(({ x }) => ({ x1: x, y1: top, x2: x, y2: top + 6 })),
        'axis',
        1,
      ),
      ...texts([
        ...ticks.map(({ x, text }) => label(small, 'middle', clamped(x, text), top + 21, text)),
        ...split.map((part, index) => label(small, 'start', 0, top + 42 + index * 19, part)),
      ]),
    ],
  };
};
