import type { Layout } from './layout.ts';
import type { Tick } from './gapScale.ts';
import type { Stretch } from './signs.ts';
import { steadyPlace } from './steadyPlace.ts';
import { stepOver, stepsBetween, tickText } from './steps.ts';
import { textWidth } from './textWidth.ts';

/** A scale from one round number to another, round in the unit that `roundScale` is told. */
export interface RoundScale {
  /** Place across the chart, px. */
  readonly place: (value: number) => number;
  readonly ticks: readonly Tick[];
  /** Both ends as printed, if the scale does not reach 0. */
  readonly cut: { readonly from: string; readonly to: string } | null;
}

const tickGap = 20;

const mostSteps = 8;

/** A round number below all `values` and one above, and how far apart the values are. */
const roundEnds = (values: readonly number[]): Stretch & { readonly span: number } => {
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  // Values all alike stand in the middle of a scale a tenth of their size long.
  const around = highest > lowest ? 0 : Math.abs(highest) / 20 || 0.5;
  const [least, most] = [lowest - around, highest + around];
  const span = most - least;
  const step = stepOver(span, mostSteps);
  const from = Math.floor(least / step + 1e-9) * step;
  return { from, to: Math.max(Math.ceil(most / step - 1e-9) * step, from + step), span };
};

/**
 * The scale from a round number below all `values` to one above, along `room`, px. Throws without values.
 *
 * @param roundIn one of the units in which the ends are round, in the unit of the values
 */
export const roundScale = (
  values: readonly number[],
  room: Stretch,
  { small }: Layout,
  roundIn = 1,
): RoundScale => {
  const ends = roundEnds(values.map((value) => value / roundIn));
  const [start, end] = [ends.from * roundIn, ends.to * roundIn];
  const step = stepOver(ends.span * roundIn, mostSteps);
  const place = (value: number): number =>
    steadyPlace(room.from + ((value - start) / (end - start)) * (room.to - room.from));

  const printed = (value: number): string => tickText(value, step);
  const widest =
    Math.max(...[start, end].map((value) => textWidth(printed(value), small.size, small.weight))) + tickGap;
  const apart = place(start + step) - place(start);
  const every = [1, 2, 5, 10].find((count) => count * apart >= widest) ?? 10;
  return {
    place,
    ticks: stepsBetween(start, end, step * every).map((value) => ({ x: place(value), text: printed(value) })),
    cut: start > 0 || end < 0 ? { from: printed(start), to: printed(end) } : null,
  };
};
