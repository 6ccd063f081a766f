/** A uniform sphere. */
export interface Ball {
  /** kg */
  readonly mass: number;
  /** m */
  readonly diameter: number;
}

/**
 * The heaviest and smallest ball the rules allow, 1.620 oz and 1.680 in rounded to 45.93 g and 42.67 mm (Equipment
 * Rules, part 4). Real balls lie close to both.
 */
export const ruleBall: Ball = { mass: 0.04593, diameter: 0.04267 };
