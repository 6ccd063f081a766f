import type { Mark } from './mark.ts';
import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import { label, texts, type Spot } from './signs.ts';
import { textWidth, wrapText } from './textWidth.ts';

/** A sign of a key, drawn from `x` on about the height `y`. */
export interface KeyItem {
  /** Of the sign, px. */
  readonly width: number;
  readonly draw: (spot: Spot) => readonly Mark[];
  readonly words: string;
}

const lineHeight = 19;
const gap = { sign: 6, item: 18 };

/** Signs with their names, as many to a line as fit: the first row of a chart. */
export const flowKey = (items: readonly KeyItem[], { small, width, textRoom }: Layout, top: number): Part => {
  const marks: Mark[] = [];
  let [x, line] = [0, 0];
  for (const { width: signWidth, draw, words } of items) {
    const inset = signWidth + gap.sign;
    const taken = inset + textWidth(words, small.size, small.weight);
    if (x > 0 && x + taken > textRoom) [x, line] = [0, line + 1];
    const split = wrapText(words, small.size, small.weight, textRoom - inset);
    const baseline = top + 15 + line * lineHeight;
    marks.push(
      ...draw({ x, y: baseline - 5 }),
      ...texts(split.map((part, row) => label(small, 'start', x + inset, baseline + row * lineHeight, part))),
    );
    line += split.length - 1;
    x = split.length > 1 ? width : x + taken + gap.item;
  }
  return { height: 24 + line * lineHeight, marks };
};
