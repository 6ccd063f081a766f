import type { ContenderName, GapWords, JudgedPair } from './apartInput.ts';
import type { FigureWords } from './figure.ts';
import type { Interval } from './intervalRows.ts';

/** A gap `a` minus `b` with its words, in the unit the reader sees. */
export interface GapRow {
  /** "88 mph, handicap 16-20", "All eight", "Another golfer". */
  readonly name: string;
  readonly estimate: number | null;
  /** The likely range; null where too little to say. */
  readonly interval: Interval | null;
  /** The gap as printed, without sign or unit: "9". May be empty. */
  readonly figure: string;
  /** What goes with it: "likely 2 to 16 yards". */
  readonly words: string;
  /** Numbers under the bar where a row is narrow; null where the words stand there too. */
  readonly printed: JudgedPair['printed'] | null;
}

export interface PooledRowsInput extends FigureWords, Omit<GapWords, 'ends'> {
  /** The one that gaps are counted towards, at the right end. */
  readonly a: ContenderName;
  readonly b: ContenderName;
  readonly each: readonly GapRow[];
  /** What a row of `each` is. */
  readonly counted: 'golfers' | 'reports';
  /** All of them combined; null where too few. */
  readonly pooled: GapRow | null;
  /** What another golfer might see, a bar without ring; null where too few golfers. */
  readonly another: GapRow | null;
  /** What the one at an end of the scale is there: "farther". */
  readonly ahead: string;
  /** Whether it is open what made the difference of the pair. */
  readonly open?: boolean;
}
