import type { GapInterval } from '../../../src/stats/gapInterval.ts';

/** A percentage with two decimals. */
export function percent(count: number, of: number): number {
  return Math.round((10_000 * count) / of) / 100;
}

export function excludesZero({ ci }: GapInterval): boolean {
  return ci[0] > 0 || ci[1] < 0;
}

export function covers({ ci }: GapInterval, truth: number): boolean {
  return ci[0] <= truth && truth <= ci[1];
}
