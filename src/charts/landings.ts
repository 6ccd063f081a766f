import type { Ellipse } from '../stats/predictionEllipse.ts';
import type { ContenderName } from './contenderName.ts';

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
