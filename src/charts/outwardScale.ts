import type { Layout } from './layout.ts';
import { stepOver, stepsBetween, tickText } from './steps.ts';
import { textWidth } from './textWidth.ts';
import type { Stretch } from './signs.ts';

/** A numbered step of a scale: px along it, and its text. */
export interface Tick {
  readonly x: number;
  readonly text: string;
}

/** A scale that counts outward from 0 at the middle, both ways alike. */
export interface OutwardScale {
  /** Place across the chart, px, of a gap `a` minus `b`: what `a` has more lies left. */
  readonly place: (gap: number) => number;
  readonly ticks: readonly Tick[];
}

/** Least room between two numbers of the axis, px. */
const tickGap = 24;

/**
 * The scale that holds every one of `gaps` and as much on the other side. `room` says from where to where it may run, px, given the number
 * at its end.
 */
export const outwardScale = (
  gaps: readonly number[],
  { small }: Layout,
  room: (endText: string) => Stretch,
): OutwardScale => {
  const largest = Math.max(0, ...gaps.map(Math.abs));
  const span = largest > 0 ? largest : 1;
  const step = stepOver(span, 5);
  const reach = Math.ceil(span / step - 1e-9) * step;
  const { from, to } = room(tickText(reach, step));
  const centre = (from + to) / 2;
  const half = (to - from) / 2;
  const place = (gap: number): number => centre - (gap / reach) * half;

  const widest = textWidth(tickText(reach, step), small.size, small.weight) + tickGap;
  const every = [1, 2, 5].find((count) => (count * step * half) / reach >= widest) ?? reach / step;
  const ticks = stepsBetween(-reach, reach, step)
    .filter((value) => Math.round(value / step) % every === 0)
    .map((value) => ({ x: place(value), text: tickText(Math.abs(value), step) }));
  return { place, ticks };
};
