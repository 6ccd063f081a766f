import type { ApartPair } from './apartInput.ts';
import type { Layout } from './layout.ts';
import { outwardScale, type OutwardScale } from './outwardScale.ts';
import { shortenText, textWidth } from './textWidth.ts';

const nameRoom = 150;
const clearance = 16;

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
): OutwardScale => {
  const gaps = pairs.flatMap((pair) => (pair.kind === 'judged' ? [pair.low, pair.high] : []));
  return outwardScale([...gaps, matters * 1.25], layout, (endText) => {
    const room = sideRoom(pairs, axis, endText, layout);
    return { from: room, to: layout.width - room };
  });
};
