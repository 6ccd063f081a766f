import { beyondBand } from './apartRow.ts';
import { axisBelow } from './axisBelow.ts';
import { bandKey } from './keys.ts';
import { layouts, type Layout, type Variant } from './layout.ts';
import type { Part } from './part.ts';
import type { PricedGap, PriceInput } from './priceInput.ts';
import { renderParts } from './renderParts.ts';
import { roundScale, type RoundScale } from './roundScale.ts';
import { hatch, hatched, label, lines, ring, ringReach, texts, type Line } from './signs.ts';
import { wrapText } from './textWidth.ts';
import { heightOf, numberRoom, uprightRules, uprightWords, type PlotPlace } from './upright.ts';

/** What one variant shows, with the image's name. */
export type PriceDrawing = Omit<PriceInput, 'question' | 'subject' | 'finding' | 'description' | 'table'> & {
  readonly name: string;
};

const plotHeights: Readonly<Record<Variant, number>> = { wide: 240, narrow: 220 };
/** Room in the plot beyond the ends of bars, for their numbers, and at the sides, px. */
const beyondBars = 26;
const inset = 14;
/** Least room between two bars, px; bars of nearly one price stand side by side. */
const barGap = 20;

interface PriceScales {
  readonly along: RoundScale;
  readonly up: RoundScale;
  readonly left: number;
}

const priceScales = ({ pairs, matters }: PriceDrawing, layout: Layout): PriceScales => {
  const height = plotHeights[layout.variant];
  const gaps = pairs.flatMap(({ low, high }) => [low, high]);
  // Where a gap is negative the other half of the band is shown, and room for a number below.
  const negative = gaps.some((gap) => gap < 0);
  const values = [0, matters, ...(negative ? [-matters] : []), ...gaps];
  const room = { from: negative ? beyondBars : 8, to: height - beyondBars };
  const up = roundScale(values, room, layout);
  const left = numberRoom(up, layout);
  const prices = pairs.map(({ price }) => price);
  const along = roundScale([0, ...prices], { from: left + inset, to: layout.width - inset }, layout);
  return { along, up, left };
};

/** Places for bars in rising order: as near to `wanted` as lets them stay apart and end by `last`. */
export const sideBySide = (wanted: readonly number[], last: number): readonly number[] => {
  const pushed: number[] = [];
  for (const place of wanted) pushed.push(Math.max(place, (pushed.at(-1) ?? -Infinity) + barGap));
  let limit = last;
  return pushed
    .toReversed()
    .map((place) => {
      const kept = Math.min(place, limit);
      limit = kept - barGap;
      return kept;
    })
    .toReversed();
};

/** The upright bar of a gap with its ring, thick where it would matter; its number at the end away from 0, clear of the band. */
const gapMarks = (
  { low, estimate, high }: PricedGap,
  number: number,
  matters: number,
  x: number,
  heightAt: (value: number) => number,
  { estimate: style }: Layout,
): Part['marks'] => {
  const upright = (from: number, to: number): Line => ({
    x1: x,
    y1: heightAt(from),
    x2: x,
    y2: heightAt(to),
  });
  const short = heightAt(low) - heightAt(high) < 2 * ringReach + 6;
  const fits = [
    lines([upright(low, high)], 'ink', 2.5),
    lines(
      beyondBand(low, high, matters).map(([from, to]) => upright(from, to)),
      'ink',
      short ? 5 : 9,
    ),
  ];
  const shown = ring({ x, y: heightAt(estimate) });
  const baseline =
    estimate > 0
      ? Math.min(heightAt(high), heightAt(estimate) - ringReach, heightAt(matters)) - 7
      : Math.max(heightAt(low), heightAt(estimate) + ringReach, heightAt(-matters)) + 17;
  return [
    ...(short ? [shown, ...fits] : [...fits, shown]),
    ...texts([label(style, 'middle', x, baseline, String(number))], { clear: true }),
  ];
};

const plotPart = (drawing: PriceDrawing, layout: Layout, top: number): Part => {
  const { pairs, matters } = drawing;
  const { along, up, left } = priceScales(drawing, layout);
  const height = plotHeights[layout.variant];
  const place: PlotPlace = { left, right: layout.width, top, bottom: top + height };
  const heightAt = heightOf(up, place);
  const across = sideBySide(
    pairs.map(({ price }) => along.place(price)),
    place.right - inset,
  );
  // Where no gap is negative only half the band is shown.
  const bandFoot = Math.min(heightAt(-matters), place.bottom);
  const level = (y: number): Line => ({ x1: left, y1: y, x2: place.right, y2: y });
  const axis = axisBelow(drawing.priceAxis, along.ticks, layout, place.bottom, {
    from: left,
    to: place.right,
  });
  return {
    height: height + axis.height,
    marks: [
      ...(matters > 0 ? [hatched([{ x1: left, y1: heightAt(matters), x2: place.right, y2: bandFoot }])] : []),
      ...uprightRules(up, place, layout),
      lines(
        [heightAt(matters), heightAt(-matters)].filter((y) => matters > 0 && y < place.bottom).map(level),
        'band-edge',
        1.25,
      ),
      lines([level(heightAt(0))], 'ink', 1.25),
      ...axis.marks,
      ...pairs.flatMap((pair, index) =>
        gapMarks(pair, index + 1, matters, across[index] ?? 0, heightAt, layout),
      ),
    ],
  };
};

/** What a numbered bar is: name, and words below. */
const listPart = (pair: PricedGap, number: number, layout: Layout, top: number): Part => {
  const { name, numbers, estimate, width, nameInset } = layout;
  const room = width - nameInset;
  const names = wrapText(pair.name, name.size, name.weight, room);
  const words = wrapText(pair.words, numbers.size, numbers.weight, room);
  const baseline = (line: number): number => top + 22 + line * 19;
  return {
    height: 11 + (names.length + words.length) * 19,
    marks: [
      lines([{ x1: 0, y1: top, x2: width, y2: top }], 'rule', 1),
      ...texts([
        label(estimate, 'start', 0, baseline(0), String(number)),
        ...names.map((line, index) => label(name, 'start', nameInset, baseline(index), line)),
        ...words.map((line, index) =>
          label(numbers, 'start', nameInset, baseline(names.length + index), line),
        ),
      ]),
    ],
  };
};

/** One variant of *Price and yards* as SVG text; `pairs` in rising order of price. */
export const priceVariant = (drawing: PriceDrawing, variant: Variant): string => {
  const layout = layouts[variant];
  const { pairs, matters, legend } = drawing;
  return renderParts(
    drawing,
    layout,
    [
      (top) => uprightWords(drawing.gapAxis, layout, top),
      (top) => plotPart(drawing, layout, top),
      ...(matters > 0 ? [(top: number) => bandKey(legend, layout, top)] : []),
      () => ({ height: 14, marks: [] }),
      ...pairs.map((pair, index) => (top: number) => listPart(pair, index + 1, layout, top)),
    ],
    matters > 0 ? [hatch] : [],
  );
};
