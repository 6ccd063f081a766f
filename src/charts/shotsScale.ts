import type { ShotsStrip } from './allShotsInput.ts';
import type { Layout } from './layout.ts';
import { roundScale, type RoundScale } from './roundScale.ts';

/** Room at either end for marks and half a number, px. */
const inset = 14;

/** The scale from a round number below every shot and average to one above, one for all strips. */
export const shotsScale = (strips: readonly ShotsStrip[], layout: Layout, roundIn: number): RoundScale => {
  const values = strips.flatMap(({ shots, average }) => [
    ...shots.map(({ value }) => value),
    ...(average === null ? [] : [average.value, average.interval?.low, average.interval?.high]),
  ]);
  const known = values.filter((value) => value !== undefined);
  return roundScale(known, { from: inset, to: layout.width - inset }, layout, roundIn);
};
