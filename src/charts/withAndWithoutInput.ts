import type { ContenderName } from './apartInput.ts';
import type { FigureWords } from './figure.ts';
import type { GapRow } from './pooledRowsInput.ts';

/** A pair's gap, `a` minus `b`, from all shots and from those that were kept. */
export interface PairedGaps {
  readonly a: ContenderName;
  readonly b: ContenderName;
  /** Both answers: "Alder farther than Birch either way." */
  readonly sentence: string;
  /** Named "All 38 shots". */
  readonly all: GapRow;
  /** Named "Without the 2 left out". */
  readonly kept: GapRow;
}

export interface WithAndWithoutInput extends FigureWords {
  readonly pairs: readonly PairedGaps[];
  /** Shots left out; without any there is no chart. */
  readonly leftOut: number;
  /** The smallest gap that matters, in the unit of the pairs; 0 draws no band. */
  readonly matters: number;
  /** What the scale counts: "yards farther". */
  readonly axis: string;
  /** What the hatched band says: "Under 5 yards: too small to matter". */
  readonly legend: string;
}
