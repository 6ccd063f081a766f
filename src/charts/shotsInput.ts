import type { ContenderName } from './apartInput.ts';
import type { FigureWords } from './figure.ts';

interface Shot {
  /** In the unit the reader sees. */
  readonly value: number;
  readonly leftOut: boolean;
}

interface Average {
  readonly value: number;
  /** Rounded, without unit. */
  readonly text: string;
  /** The likely range of the average; null where too few shots to say. */
  readonly interval: { readonly low: number; readonly high: number } | null;
}

/** The shots of one contender. */
export interface ShotsStrip {
  readonly contender: ContenderName;
  readonly shots: readonly Shot[];
  /** Said beside the name: "12 shots, 225 to 245, average 237". */
  readonly numbers: string;
  readonly average: Average | null;
}

export interface ShotsInput extends FigureWords {
  /** In the order contenders are listed. */
  readonly strips: readonly ShotsStrip[];
  /** One of the units in which the scale ends on round numbers, in the unit of the values. */
  readonly roundIn: number;
  /** What the signs are called: a mark, the ring and the bar of an average; null for those that do not occur. */
  readonly key: { readonly shot: string; readonly ring: string | null; readonly bar: string | null };
  /** What the scale measures: "Carry in yards". */
  readonly axis: string;
  /** What a hollow mark with a stroke through says: "left out". */
  readonly leftOut: string;
  /** Shots recorded, those without a value for this chart among them. */
  readonly recorded: number;
}
