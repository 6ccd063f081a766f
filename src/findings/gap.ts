import type { GapInterval } from '../stats/gapInterval.ts';
import type { GapMethod, Omnibus } from './findings.ts';

/** A gap of two contenders, `a` minus `b`, SI, with the method that worked it out. */
export interface Gap extends GapInterval {
  readonly a: string;
  readonly b: string;
  readonly method: GapMethod;
}

/** The gaps of all pairs that can be judged, with the test of all contenders at once where the method has one. */
export interface Gaps {
  readonly gaps: readonly Gap[];
  readonly omnibus: Omnibus | null;
  /** Averages of a hitter with a contender that stand on far fewer shots than usual, and do not count. */
  readonly cellsLeftOut: number;
}

export const noGaps: Gaps = { gaps: [], omnibus: null, cellsLeftOut: 0 };
