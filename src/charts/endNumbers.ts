import type { Layout } from './layout.ts';
import { label, type Label } from './signs.ts';
import { textWidth } from './textWidth.ts';

/** What stands under the ring and the ends of a bar: rounded, without sign or unit. */
export interface BarNumbers {
  readonly estimate: string;
  readonly low: string;
  readonly high: string;
}

/** A difference, with its likely range, in the unit the reader sees. */
interface Bar {
  readonly low: number;
  readonly estimate: number;
  readonly high: number;
  readonly printed: BarNumbers;
}

/** Least room between two numbers under a bar, px. */
const numberGap = 6;

/** Numbers under the ring and the ends of the bar, moved apart where they would touch; of a bar without a ring those of its ends. */
export const endNumbers = (
  { low, estimate, high, printed }: Bar,
  place: (gap: number) => number,
  layout: Layout,
  baseline: number,
): readonly Label[] => {
  const placed = [
    { at: place(low), words: printed.low, style: layout.small },
    { at: place(estimate), words: printed.estimate, style: layout.estimate },
    { at: place(high), words: printed.high, style: layout.small },
  ].map((one) => ({ ...one, half: textWidth(one.words, one.style.size, one.style.weight) / 2 }));
  const [less, middle, more] = placed;
  if (less === undefined || middle === undefined || more === undefined) return [];
  // The ring's own number gives way only to the edges, and to the room that the others need there.
  const apart = (one: typeof less): number => one.half + middle.half + numberGap;
  const x = Math.min(Math.max(middle.at, less.half + apart(less)), layout.width - more.half - apart(more));
  const [left, right] = [
    Math.max(Math.min(less.at, x - apart(less)), less.half),
    Math.min(Math.max(more.at, x + apart(more)), layout.width - more.half),
  ];
  return [
    label(less.style, 'middle', left, baseline, less.words),
    ...(middle.words === '' ? [] : [label(middle.style, 'middle', x, baseline, middle.words)]),
    label(more.style, 'middle', right, baseline, more.words),
  ];
};
