import type { ContenderName } from './apartInput.ts';
import type { FigureWords } from './figure.ts';
import type { Interval } from './intervalRows.ts';

/** How far the shots of one contender scatter in one direction, in the unit the reader sees. */
export interface SpreadRow {
  readonly contender: ContenderName;
  /** Standard deviation; null where shots are too few for one. */
  readonly spread: number | null;
  /** Its likely range; null where shots are too few to say. */
  readonly interval: Interval | null;
  /** The spread as printed: "8". May be empty. */
  readonly figure: string;
  /** "likely 6 to 12", "five shots are too few to say". */
  readonly words: string;
}

/** One direction: carry, or side. */
interface SpreadGroup {
  /** "Carry: alike or tighter, cannot tell." */
  readonly heading: string;
  /** In the order contenders are listed. */
  readonly rows: readonly SpreadRow[];
}

export interface SpreadInput extends FigureWords {
  readonly groups: readonly SpreadGroup[];
  /** What ring and bar are called. */
  readonly key: { readonly ring: string; readonly bar: string };
  /** What the scale measures: "Standard deviation in yards". */
  readonly axis: string;
}
