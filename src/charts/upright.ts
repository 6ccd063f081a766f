import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import type { RoundScale } from './roundScale.ts';
import { label, lines, texts, type Line } from './signs.ts';
import { textWidth, wrapText } from './textWidth.ts';

/** Where a plot with scales on two sides lies, px. */
export interface PlotPlace {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Room left of a plot for the numbers of its upright scale, px. */
export const numberRoom = ({ ticks }: RoundScale, { small }: Layout): number =>
  Math.ceil(Math.max(0, ...ticks.map(({ text }) => textWidth(text, small.size, small.weight)))) + 8;

/** Height of a value on an upright scale that was made along its height, px. */
export const heightOf =
  (scale: RoundScale, { bottom }: PlotPlace) =>
  (value: number): number =>
    bottom - scale.place(value);

/** What an upright scale measures, in lines over its plot. */
export const uprightWords = (words: string, { small, textRoom }: Layout, top: number): Part => {
  const split = wrapText(words, small.size, small.weight, textRoom);
  return {
    height: 10 + split.length * 19,
    marks: [...texts(split.map((line, index) => label(small, 'start', 0, top + 20 + index * 19, line)))],
  };
};

/** Rules across a plot at the numbers of its upright scale, the numbers at their left. */
export const uprightRules = (scale: RoundScale, place: PlotPlace, { small }: Layout): Part['marks'] => {
  const across = scale.ticks.map(({ x, text }) => ({ y: place.bottom - x, text }));
  const rule = ({ y }: { readonly y: number }): Line => ({ x1: place.left, y1: y, x2: place.right, y2: y });
  return [
    lines(across.map(rule), 'rule', 1),
    ...texts(across.map(({ y, text }) => label(small, 'end', place.left - 7, y + 4.5, text))),
  ];
};
