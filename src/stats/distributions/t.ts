import { requirePositive, StatisticsError } from '../statisticsError.ts';
import { betaQuantile, betaUpperQuantile } from './beta.ts';
import { fUpper } from './f.ts';
import { normalQuantile, normalUpper } from './normal.ts';

/** P(T > t), Student's t with `df` degrees of freedom (any positive number, infinity gives the normal), relative accuracy kept in the far tail. */
export function tUpper(t: number, df: number): number {
  requirePositive('tUpper', 'df', df);
  if (Number.isNaN(t)) throw new StatisticsError('bad-argument', 'tUpper', 't is not a number');
  if (df === Infinity) return normalUpper(t);
  const outside = fUpper(t * t, 1, df) / 2;
  return t > 0 ? outside : 1 - outside;
}

/** P(|T| > |t|). */
export function tTwoSided(t: number, df: number): number {
  return 2 * tUpper(Math.abs(t), df);
}

/** t with P(T <= t) = p. 0 and 1 give minus and plus infinity. */
export function tQuantile(p: number, df: number): number {
  requirePositive('tQuantile', 'df', df);
  if (!(p >= 0 && p <= 1))
    throw new StatisticsError('bad-argument', 'tQuantile', `p must be 0 to 1, got ${p}`);
  if (df === Infinity) return normalQuantile(p);
  if (p === 0 || p === 1) return p === 0 ? -Infinity : Infinity;
  const twoSided = 2 * Math.min(p, 1 - p);
  // near the middle t^2 / (df + t^2) is small, in the tails its complement: each asked for by name
  const inner = betaUpperQuantile(twoSided, 0.5, df / 2);
  const outer = inner < 0.5 ? 1 - inner : betaQuantile(twoSided, df / 2, 0.5);
  const size = Math.sqrt((df * (inner < 0.5 ? inner : 1 - outer)) / outer);
  return p < 0.5 ? -size : size;
}
