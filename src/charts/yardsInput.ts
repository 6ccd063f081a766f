import type { ContenderName, GapWords } from './apartInput.ts';
import type { FigureWords } from './figure.ts';
import type { GapRow } from './pooledRowsInput.ts';

/** Where a gap in carry comes from, `a` minus `b`, in the unit the reader sees. */
export interface YardsInput extends FigureWords, Omit<GapWords, 'ends'> {
  /** Stands at the right end. */
  readonly a: ContenderName;
  readonly b: ContenderName;
  /** The gap as it was measured. */
  readonly measured: GapRow;
  /**
   * Ball speed, launch, spin, direction: each with the range of all sets of coefficients together. Where the sets disagree the estimate is
   * null and the words say "not settled".
   */
  readonly parts: readonly GapRow[];
  /** What the parts leave over: "Not explained". */
  readonly rest: GapRow;
  /** What the one at an end of the scale is there: "farther". */
  readonly ahead: string;
}
