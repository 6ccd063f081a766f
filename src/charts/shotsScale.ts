import type { ShotsStrip } from './allShotsInput.ts';
import type { Layout } from './layout.ts';
import { stepOver, stepsBetween, tickText } from './steps.ts';
import { textWidth } from './textWidth.ts';

/** One scale for all strips. */
export interface ShotsScale {
  /** Place across the chart, px. */
  readonly place: (value: number) => number;
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  /** Both ends as printed, if the scale does not reach 0. */
  readonly cut: { readonly from: string; readonly to: string } | null;
}

/** Room at either end for marks and half a number, px. */
const inset = 14;
const tickGap = 20;

/** The scale from a round number below every shot and average to one above. */
export const shotsScale = (strips: readonly ShotsStrip[], layout: Layout): ShotsScale => {
  const values = strips.flatMap(({ shots, average }) => [
    ...shots.map(({ value }) => value),
    ...(average === null ? [] : [average.value, average.interval?.low, average.interval?.high]),
  ]);
  const known = values.filter((value) => value !== undefined);
  const [lowest, highest] = [Math.min(...known), Math.max(...known)];
  // Values all alike stand in the middle of a scale a tenth of their size long.
  const room = highest > lowest ? 0 : Math.abs(highest) / 20 || 0.5;
  const [least, most] = [lowest - room, highest + room];
  const step = stepOver(most - least, 8);
  const start = Math.floor(least / step + 1e-9) * step;
  const end = Math.max(Math.ceil(most / step - 1e-9) * step, start + step);
  const place = (value: number): number =>
    inset + ((value - start) / (end - start)) * (layout.width - 2 * inset);

  const printed = (value: number): string => tickText(value, step);
  const { size, weight } = layout.small;
  const widest = Math.max(...[start, end].map((value) => textWidth(printed(value), size, weight))) + tickGap;
  const apart = place(start + step) - place(start);
  const every = [1, 2, 5, 10].find((count) => count * apart >= widest) ?? 10;
  return {
    place,
    ticks: stepsBetween(start, end, step * every).map((value) => ({ x: place(value), text: printed(value) })),
    cut: start > 0 || end < 0 ? { from: printed(start), to: printed(end) } : null,
  };
};
