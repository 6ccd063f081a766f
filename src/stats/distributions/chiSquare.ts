import { gammaQuantile, gammaUpperQuantile } from './gamma.ts';

/** x with P(X <= x) = p. */
export function chiSquareQuantile(p: number, df: number): number {
  return 2 * gammaQuantile(p, df / 2);
}

/** x with P(X > x) = p. */
export function chiSquareUpperQuantile(p: number, df: number): number {
  return 2 * gammaUpperQuantile(p, df / 2);
}
