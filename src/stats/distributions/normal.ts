import erfc from '@stdlib/math-base-special-erfc';
import erfcinv from '@stdlib/math-base-special-erfcinv';
import { StatisticsError } from '../statisticsError.ts';

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
}

/** P(Z > z), relative accuracy kept in the far tail. */
export function normalUpper(z: number): number {
  return 0.5 * erfc(z * Math.SQRT1_2);
}

/** z with P(Z <= z) = p. 0 and 1 give minus and plus infinity. @throws StatisticsError `bad-argument` */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1))
    throw new StatisticsError('bad-argument', 'normalQuantile', `p must be 0 to 1, got ${p}`);
  return -Math.SQRT2 * erfcinv(2 * p);
}
