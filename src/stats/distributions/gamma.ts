import gammainc from '@stdlib/math-base-special-gammainc';
import gammaincinv from '@stdlib/math-base-special-gammaincinv';
import { requirePositive, StatisticsError } from '../statisticsError.ts';

/** P(G <= x), gamma distribution of this shape and scale 1. */
export function gammaCdf(x: number, shape: number): number {
  requirePositive('gammaCdf', 'shape', shape);
  if (x <= 0) return 0;
  return x === Infinity ? 1 : gammainc(x, shape, true, false);
}

/** P(G > x), relative accuracy kept in the far tail. */
export function gammaUpper(x: number, shape: number): number {
  requirePositive('gammaUpper', 'shape', shape);
  if (x <= 0) return 1;
  return x === Infinity ? 0 : gammainc(x, shape, true, true);
}

/** x with P(G <= x) = p. */
export function gammaQuantile(p: number, shape: number): number {
  requirePositive('gammaQuantile', 'shape', shape);
  if (!(p >= 0 && p <= 1))
    throw new StatisticsError('bad-argument', 'gammaQuantile', `p must be 0 to 1, got ${p}`);
  if (p === 0) return 0;
  return p === 1 ? Infinity : gammaincinv(p, shape, false);
}

/** x with P(G > x) = p. */
export function gammaUpperQuantile(p: number, shape: number): number {
  requirePositive('gammaUpperQuantile', 'shape', shape);
  if (!(p >= 0 && p <= 1)) {
    throw new StatisticsError('bad-argument', 'gammaUpperQuantile', `p must be 0 to 1, got ${p}`);
  }
  if (p === 0) return Infinity;
  return p === 1 ? 0 : gammaincinv(p, shape, true);
}
