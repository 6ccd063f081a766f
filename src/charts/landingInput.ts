import type { Ellipse } from '../stats/predictionEllipse.ts';
import type { ContenderName } from './apartInput.ts';
import type { FigureWords } from './figure.ts';

/** Where a ball came down, in the unit the reader sees; `side` counts to the right of the target line. */
export interface Landing {
  readonly side: number;
  readonly carry: number;
}

interface LandedShot extends Landing {
  readonly leftOut: boolean;
}

/** Where the next shot would land: centre as side and carry, the angle from the right towards farther, radians. */
export type LandingCurve = Pick<Ellipse, 'centre' | 'halfAxes' | 'angle'>;

/** The shots of one contender. */
export interface LandingPanel {
  readonly contender: ContenderName;
  readonly shots: readonly LandedShot[];
  /** Said under the name: "average 237 yards, 4 right". */
  readonly numbers: string;
  readonly average: Landing | null;
  /** Null where shots are too few for one. */
  readonly curve: LandingCurve | null;
  /** Counted shots at the foot: "5 shots left", "8 of 12 within 15 yd", "7 shots right". */
  readonly feet: { readonly left: string; readonly within: string; readonly right: string };
}

export interface LandingInput extends FigureWords {
  /** In the order contenders are listed. */
  readonly panels: readonly LandingPanel[];
  /** Half the width of the lane the bracket spans, in the unit of the shots. */
  readonly within: number;
  /** What the scale measures: "Yards. Up: carry. Across: left and right of the target line. Same scale in all panels.". */
  readonly axis: string;
  /** What the signs are called; those that do not occur are not shown. */
  readonly key: {
    readonly shot: string;
    readonly ring: string;
    /** "nine in ten further shots should land inside" */
    readonly curve: string;
    /** "the other two heads" */
    readonly others: string;
    /** "within 15 yards of the line" */
    readonly bracket: string;
  };
  /** What a hollow mark with a stroke through says: "left out". */
  readonly leftOut: string;
  /** Shots recorded, those without a place among them. */
  readonly recorded: number;
}
