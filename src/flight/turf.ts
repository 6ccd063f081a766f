/** Ground as a rigid plane that answers as if tilted towards the ball. */
export interface Turf {
  /** degrees */
  readonly tilt: number;
  readonly restitution: number;
  readonly friction: number;
}

/**
 * Turf beside a tee, from over 1,000 filmed bounces (Biber, Jones, Champneys, Green & Szalai 2023, Sports
 * Engineering; constants by way of two transcriptions). Its authors say that no such plane fits every bounce.
 */
export const naturalTurf: Turf = { tilt: 18.4, restitution: 0.147, friction: 0.998 };
