import type { ContenderName } from './apartInput.ts';
import type { FigureWords } from './figure.ts';

/** One shot of a session. */
interface OrderedShot {
  /** Place in the session, from 1. */
  readonly number: number;
  /** In the unit the reader sees. */
  readonly value: number;
  /** Place of its contender in the report's list, from 0. */
  readonly contender: number;
  readonly leftOut: boolean;
}

/** The straight line through the shots of one contender, ends in shots and in the unit of the shots. */
export interface OrderTrend {
  /** Place of its contender in the report's list, from 0. */
  readonly contender: number;
  readonly from: { readonly number: number; readonly value: number };
  readonly to: { readonly number: number; readonly value: number };
  /** What the line says: "Heron: no clear trend in carry, give or take 4 yards in ten shots". */
  readonly words: string;
}

export interface OrderInput extends FigureWords {
  /** In the order contenders are listed; those without a shot too. */
  readonly contenders: readonly ContenderName[];
  readonly shots: readonly OrderedShot[];
  /** Of contenders with shots enough for one. */
  readonly trends: readonly OrderTrend[];
  /** One of the units in which the scale up the side ends on round numbers, in the unit of the values. */
  readonly roundIn: number;
  /** What the scale up the side measures: "Carry in yards". */
  readonly axis: string;
  /** What the scale along the foot counts: "Shot number". */
  readonly numberAxis: string;
  /** What a hollow mark with a stroke through says: "left out". */
  readonly leftOut: string;
  /** Shots recorded, those without a value for this chart among them. */
  readonly recorded: number;
}
