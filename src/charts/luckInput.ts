import type { FigureWords } from './figure.ts';

/** Gaps between the best and the last average, in the unit the reader sees. */
export interface LuckInput extends FigureWords {
  /** What contenders all equal would differ by. */
  readonly luck: {
    readonly average: number;
    /** Reached one time in twenty. */
    readonly upTo: number;
    /** "By chance: typically about 3 yards, more than 6 in one test of 20". */
    readonly words: string;
  };
  readonly seen: {
    readonly gap: number;
    /** The pair and how far apart it came, and its answer: "Alder and Cedar: 12 yards apart", "Clear difference". */
    readonly words: readonly string[];
  };
  /** One of the units in which the scale ends on round numbers, in the unit of the values. */
  readonly roundIn: number;
  /** What the scale measures: "Yards between the farthest head and the shortest". */
  readonly axis: string;
}
