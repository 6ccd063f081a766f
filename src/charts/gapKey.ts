import { flowKey, type KeyItem } from './flowKey.ts';
import type { Layout } from './layout.ts';
import type { Part } from './part.ts';
import { bar, openBar, ring, type Spot } from './signs.ts';

/** What the signs of a chart of gaps are called; null for those that do not occur. */
export interface GapKey {
  readonly ring: string;
  readonly bar: string;
  readonly thick: string | null;
  readonly open: string | null;
  /** Whether any bar is filled; else the samples are not. */
  readonly filled: boolean;
}

const sample = 26;

/** The ring of a key. */
export const ringItem = (words: string): KeyItem => ({
  width: 17,
  draw: ({ x, y }) => [ring({ x: x + 8, y }, 6)],
  words,
});

/** The bar of a key. */
export const barItem = (words: string, thick = false, open = false): KeyItem => ({
  width: sample,
  draw: ({ x, y }: Spot) => {
    const whole = { from: x, to: x + sample };
    return (open ? openBar : bar)(y, whole, thick ? [whole] : []);
  },
  words,
});

/** The signs of a chart of gaps with their names. */
export const gapKey = (
  { ring: estimate, bar: range, thick, open, filled }: GapKey,
  layout: Layout,
  top: number,
): Part =>
  flowKey(
    [
      ringItem(estimate),
      barItem(range, false, !filled),
      ...(thick === null ? [] : [barItem(thick, true, !filled)]),
      ...(open === null ? [] : [barItem(open, true, true)]),
    ],
    layout,
    top,
  );
