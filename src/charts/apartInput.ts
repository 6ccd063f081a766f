import type { FigureWords } from './figure.ts';
import type { GapEnds } from './gapAxis.ts';
import type { GapKey } from './gapKey.ts';

export interface ContenderName {
  readonly label: string;
  /** Place in the report's list of contenders, from 0. */
  readonly index: number;
}

/** A pair with its gap, the first-named minus the second, in the unit the reader sees. */
export interface JudgedPair {
  readonly kind: 'judged';
  /** "Sorrel over Tansy"; where nobody is ahead "Rowan and Tansy". */
  readonly name: string;
  /** The answer in words: "Difference, size uncertain". */
  readonly answer: string;
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** Whether the cause of the difference is open: then the bar is not filled. */
  readonly open: boolean;
  /** What stands under the ring and the ends of the bar: rounded, without sign or unit. */
  readonly printed: { readonly estimate: string; readonly low: string; readonly high: string };
}

/** A pair that was not judged, in words alone. */
export interface UnjudgedPair {
  readonly kind: 'not-judged';
  readonly sentence: string;
}

export type ApartPair = JudgedPair | UnjudgedPair;

/** What a chart of gaps says of its scale and its signs. */
export interface GapWords {
  /** The smallest gap that matters, in the unit of the pairs; 0 draws no band. */
  readonly matters: number;
  /** Over the band: "too small to matter, under 4 yards". */
  readonly bandWords: string;
  /** After the last number of the scale: "yards"; empty for a ratio. */
  readonly unit: string;
  readonly ends: GapEnds;
  /** Under the scale: of what the differences are, and what ranges hold. */
  readonly foot: string;
  readonly key: GapKey;
}

export interface ApartInput extends FigureWords, GapWords {
  /** In the order of the answer, the surest first. */
  readonly pairs: readonly ApartPair[];
  /** Pairs that there are, those that only the table has among them. */
  readonly recorded: number;
}
