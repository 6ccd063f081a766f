import type { ApartPair } from './apartInput.ts';
import type { Layout } from './layout.ts';
import { stepOver, stepsBetween, tickText } from './steps.ts';
import { shortenText, textWidth } from './textWidth.ts';

/** A scale that counts outward from 0 at the middle, both ways alike. */
export interface ApartScale {
  /** Place across the chart, px, of a gap `a` minus `b`: what `a` has more lies left. */
  readonly place: (gap: number) => number;
  /** Numbered steps, px and text. */
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
}

const nameRoom = 150;
const clearance = 16;
/** Least room between two numbers of the axis, px. */
const tickGap = 24;

/** A contender's name at the end of a wide row: one line, or two as even as its words allow. */
export const nameLines = (label: string, { name }: Layout): readonly string[] => {
  const { size, weight } = name;
  if (textWidth(label, size, weight) <= nameRoom) return [label];
  const words = label.split(/\s+/);
  const splits = words.slice(1).map((_, index) => [words.slice(0, index + 1), words.slice(index + 1)]);
  const widest = (lines: readonly (readonly string[])[]): number =>
    Math.max(...lines.map((line) => textWidth(line.join(' '), size, weight)));
  const [best = [words]] = splits.sort((one, other) => widest(one) - widest(other));
  return best.map((line) => shortenText(line.join(' '), size, weight, nameRoom));
};

const nameWidth = (label: string, layout: Layout): number =>
  Math.max(...nameLines(label, layout).map((line) => textWidth(line, layout.name.size, layout.name.weight)));

/** Room on either side that names and the axis words take from the scale, px. */
const sideRoom = (pairs: readonly ApartPair[], axis: string, endText: string, layout: Layout): number => {
  const { size, weight } = layout.small;
  const halfTick = textWidth(endText, size, weight) / 2;
  if (layout.variant === 'narrow') return Math.max(10, halfTick);
  const names = pairs.flatMap(({ a, b }) => [a, b]).map(({ label }) => nameWidth(label, layout));
  return Math.max(
    100,
    layout.nameInset + Math.max(...names) + clearance,
    textWidth(axis, size, weight) + clearance + halfTick,
  );
};

/** The scale that holds every bar of `pairs` and both edges of the band. */
export const apartScale = (
  pairs: readonly ApartPair[],
  matters: number,
  axis: string,
  layout: Layout,
): ApartScale => {
  const gaps = pairs.flatMap((pair) =>
    pair.kind === 'judged' ? [Math.abs(pair.low), Math.abs(pair.high)] : [],
  );
  const largest = Math.max(...gaps, matters * 1.25);
  const span = largest > 0 ? largest : 1;
  const step = stepOver(span, 5);
  const reach = Math.ceil(span / step - 1e-9) * step;
  const centre = layout.width / 2;
  const half = centre - sideRoom(pairs, axis, tickText(reach, step), layout);
  const place = (gap: number): number => centre - (gap / reach) * half;

  const widest = textWidth(tickText(reach, step), layout.small.size, layout.small.weight) + tickGap;
  const every = [1, 2, 5].find((count) => (count * step * half) / reach >= widest) ?? reach / step;
  const ticks = stepsBetween(-reach, reach, 1 * step)
    .filter((value) => Math.round(value / step) % every === 0)
    .map((value) => ({ x: place(value), text: tickText(Math.abs(value), step) }));
  return { place, ticks };
};
