import type { ContenderName } from './contenderName.ts';
import { contenderMark } from './contenderMarks.ts';
import type { KeyItem } from './flowKey.ts';
import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import { label, leftOutMarks, marks, texts, type Spot } from './signs.ts';
import { shortenText, textWidth, wrapText } from './textWidth.ts';
import type { Mark } from './mark.ts';

/** A line that says what a sign means: the sign about a spot in a box `inset` px wide, the words after it. */
export const signKey = (
  sign: (spot: Spot) => readonly Mark[],
  words: string,
  { small, textRoom }: Layout,
  top: number,
  inset = 22,
): Part => {
  const split = wrapText(words, small.size, small.weight, textRoom - inset);
  return {
    height: 24 + (split.length - 1) * 19,
    marks: [
      ...sign({ x: 8, y: top + 19 }),
      ...texts(split.map((line, row) => label(small, 'start', inset, top + 24 + row * 19, line))),
    ],
  };
};

/** What a hollow mark means, with the mark of the contender at `index`, the first that has one. */
export const leftOutKey = (words: string, index: number, layout: Layout, top: number): Part =>
  signKey((spot) => leftOutMarks([spot], contenderMark(index), 4.5), words, layout, top);

/** A mark of each contender, beside one another, as a shot in a key. */
export const shotItem = (indices: readonly number[], words: string): KeyItem => ({
  width: indices.length * 12,
  draw: ({ x, y }) =>
    indices.map((index, place) => marks([{ x: x + 6 + place * 12, y }], contenderMark(index), 4.5)),
  words,
});

/** A hollow mark in a key, of the contender at `index`. */
export const leftOutItem = (index: number, words: string): KeyItem => ({
  width: 12,
  draw: ({ x, y }) => leftOutMarks([{ x: x + 6, y }], contenderMark(index), 4.5),
  words,
});

/** Every contender's mark with its name, as many to a line as fit. */
export const namesKey = (contenders: readonly ContenderName[], layout: Layout, top: number): Part => {
  const { name, nameInset, markInset, markRadius, width } = layout;
  let [x, line] = [0, 0];
  const placed = contenders.map(({ label: words, index }) => {
    const fitted = shortenText(words, name.size, name.weight, width - nameInset);
    const taken = nameInset + textWidth(fitted, name.size, name.weight);
    if (x > 0 && x + taken > width) [x, line] = [0, line + 1];
    const spot = { x, y: top + 22 + line * 22 };
    x += taken + 24;
    return { ...spot, fitted, index };
  });
  return {
    height: 30 + line * 22,
    marks: [
      ...placed.map((one) =>
        marks([{ x: one.x + markInset, y: one.y - 5 }], contenderMark(one.index), markRadius),
      ),
      ...texts(placed.map((one) => label(name, 'start', one.x + nameInset, one.y, one.fitted))),
    ],
  };
};
