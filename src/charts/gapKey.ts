import type { Markish } from '@observablehq/plot';
import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import { bar, label, openBar, ring, texts, type Spot } from './signs.ts';
import { textWidth, wrapText } from './textWidth.ts';

/** What the signs of a chart of gaps are called; null for those that do not occur. */
export interface GapKey {
  readonly ring: string;
  readonly bar: string;
  readonly thick: string | null;
  readonly open: string | null;
  /** Whether any bar is filled; else the samples are not. */
  readonly filled: boolean;
}

/** A sign of a key, drawn from `x` on about the height `y`. */
interface KeyItem {
  readonly width: number;
  readonly draw: (spot: Spot) => readonly Markish[];
  readonly words: string;
}

const lineHeight = 19;
const gap = { sign: 6, item: 18 };
const sample = 26;

const itemsOf = ({ ring: ringWords, bar: barWords, thick, open, filled }: GapKey): readonly KeyItem[] => {
  const along = (x: number) => ({ from: x, to: x + sample });
  const own = filled ? bar : openBar;
  return [
    { width: 17, draw: ({ x, y }) => [ring({ x: x + 8, y }, 6)], words: ringWords },
    { width: sample, draw: ({ x, y }) => own(y, along(x), []), words: barWords },
    ...(thick === null
      ? []
      : [
          {
            width: sample,
            draw: ({ x, y }: Spot) => own(y, along(x), [along(x)]),
            words: thick,
          },
        ]),
    ...(open === null
      ? []
      : [
          {
            width: sample,
            draw: ({ x, y }: Spot) => openBar(y, along(x), [along(x)]),
            words: open,
          },
        ]),
  ];
};

/** The signs with their names, as many to a line as fit. */
export const gapKey = (key: GapKey, { small, width }: Layout, top: number): Part => {
  const marks: Markish[] = [];
  let [x, line] = [0, 0];
  for (const { width: signWidth, draw, words } of itemsOf(key)) {
    const inset = signWidth + gap.sign;
    const taken = inset + textWidth(words, small.size, small.weight);
    if (x > 0 && x + taken > width) [x, line] = [0, line + 1];
    const split = wrapText(words, small.size, small.weight, width - inset);
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
