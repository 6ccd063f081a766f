import type { GapWords } from './apartInput.ts';
import type { FigureWords } from './figure.ts';
import type { GapRow } from './pooledRowsInput.ts';

/** A pair's gap, `a` minus `b`, from all shots and from those that were kept. */
export interface PairedGaps {
  /** Places of the two in the report's list, from 0. */
  readonly indices: readonly [number, number];
  readonly open: boolean;
  /** Both answers: "Alder farther than Birch either way." */
  readonly sentence: string;
  /** Named "All 38 shots". */
  readonly all: GapRow;
  /** Named "Without the 2 left out". */
  readonly kept: GapRow;
}

export interface WithAndWithoutInput extends FigureWords, GapWords {
  readonly pairs: readonly PairedGaps[];
  /** Shots left out; without any there is no chart. */
  readonly leftOut: number;
}
