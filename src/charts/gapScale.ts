import type { Layout } from './layout.ts';
import { steadyPlace } from './steadyPlace.ts';
import { stepOver, stepsBetween, tickText } from './steps.ts';
import { textWidth } from './textWidth.ts';
import type { Stretch } from './signs.ts';

/** A numbered step of a scale: px along it, and its text. */
export interface Tick {
  readonly x: number;
  readonly text: string;
}

/** A scale of differences, counted outward from 0 either way without signs. */
export interface GapScale {
  /** Place across the chart, px, of a gap: what the first-named has more lies right. */
  readonly place: (gap: number) => number;
  /** The last one with the unit. */
  readonly ticks: readonly Tick[];
}

/** Least room between two numbers of the axis, px. */
const tickGap = 18;
/** How far the scale runs beyond the least and the greatest value on it, as a part of their range. */
const beyond = 0.04;

/**
 * The scale from a little beyond the band, or the least of `gaps`, to the greatest, along `room`, px. It ends where the gaps
 * do and on no round number, so that both systems of units place every mark alike.
 *
 * @param matters how far the band reaches either way of 0, in the unit of the gaps
 * @param unit stands after the last number; empty for none
 */
export const gapScale = (
  gaps: readonly number[],
  matters: number,
  unit: string,
  { small, width }: Layout,
  room: Stretch,
): GapScale => {
  const [least, most] = [Math.min(-matters, ...gaps), Math.max(matters, ...gaps)];
  const [low, high] = most > least ? [least, most] : [least - 1, most + 1];
  const more = (high - low) * beyond;
  const [start, end] = [low - more, high + more];
  const perUnit = (room.to - room.from) / (end - start);
  const place = (gap: number): number => steadyPlace(room.from + (gap - start) * perUnit);

  const step = stepOver(end - start, 7);
  const widthOf = (text: string): number => textWidth(text, small.size, small.weight);
  const widest = Math.max(...[start, end].map((value) => widthOf(tickText(Math.abs(value), step))));
  const every = [1, 2, 5, 10].find((count) => count * step * perUnit >= widest + tickGap) ?? 10;
  const numbered = stepsBetween(start, end, step * every).map((value) => ({
    x: place(value),
    text: tickText(Math.abs(value), step),
  }));
  const last = numbered.at(-1);
  if (last === undefined || unit === '') return { place, ticks: numbered };
  const named = { ...last, text: `${last.text} ${unit}` };
  // Set under its tick as near as the edge lets it; a number it would touch goes.
  const left = Math.min(last.x - widthOf(named.text) / 2, width - widthOf(named.text));
  return {
    place,
    ticks: [
      ...numbered
        .slice(0, -1)
        .map((tick) =>
          tick.x + widthOf(tick.text) / 2 + tickGap / 2 <= left ? tick : { ...tick, text: '' },
        ),
      named,
    ],
  };
};
