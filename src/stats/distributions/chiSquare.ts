import { gammaCdf, gammaQuantile, gammaUpper, gammaUpperQuantile } from './gamma.ts';

/** P(X <= x), chi-square with `df` degrees of freedom. */
export function chiSquareCdf(x: number, df: number): number {
  return gammaCdf(x / 2, df / 2);
}

/** P(X > x), relative accuracy kept in the far tail. */
export function chiSquareUpper(x: number, df: number): number {
  return gammaUpper(x / 2, df / 2);
}

/** x with P(X <= x) = p. */
export function chiSquareQuantile(p: number, df: number): number {
  return 2 * gammaQuantile(p, df / 2);
}

/** x with P(X > x) = p. */
export function chiSquareUpperQuantile(p: number, df: number): number {
  return 2 * gammaUpperQuantile(p, df / 2);
}
