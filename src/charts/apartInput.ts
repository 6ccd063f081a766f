import type { FigureWords } from './figure.ts';

export interface ContenderName {
  readonly label: string;
  /** Place in the report's list of contenders, from 0. */
  readonly index: number;
}

interface PairWords {
  readonly a: ContenderName;
  readonly b: ContenderName;
  /** The answer: "Alder clearly farther than Cedar." */
  readonly sentence: string;
  /** What goes with it: "About 12 yards, likely 7 to 18." May be empty for a pair that was not judged. */
  readonly numbers: string;
}

/** A pair with its gap, `a` minus `b`, in the unit the reader sees. */
export interface JudgedPair extends PairWords {
  readonly kind: 'judged';
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** What stands under the ring and the ends of the bar: rounded, without sign or unit. */
  readonly printed: { readonly estimate: string; readonly low: string; readonly high: string };
}

export interface UnjudgedPair extends PairWords {
  readonly kind: 'not-judged';
}

export type ApartPair = JudgedPair | UnjudgedPair;

export interface ApartInput extends FigureWords {
  /** The first one of each pair stands at the left end of its row. */
  readonly pairs: readonly ApartPair[];
  /** The smallest gap that matters, in the unit of the pairs; 0 draws no band. */
  readonly matters: number;
  /** What the scale counts towards either end: "yards farther". */
  readonly axis: string;
  /** What the hatched band says: "Under 5 yards: too small to matter". */
  readonly legend: string;
}
