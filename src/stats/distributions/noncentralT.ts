import { requirePositive, StatisticsError } from '../statisticsError.ts';
import { normalUpper } from './normal.ts';
import { sumOverChi } from './sumOverChi.ts';

/** No normal deviate lies farther out: the chance is 0 to the last digit. */
const farOut = 40;

/**
 * P(T > t) of the noncentral t: (Z + delta) / S with S the root of chi-square(df) / df. Computed as the average
 * of P(Z > t s - delta) over s (definition in Johnson, Kotz & Balakrishnan, *Continuous Univariate
 * Distributions* 2, chapter 31). Relative accuracy is kept in the upper tail for t > 0.
 *
 * @param delta noncentrality, any finite number
 * @throws StatisticsError `bad-argument`
 */
export function noncentralTUpper(t: number, df: number, delta: number): number {
  requirePositive('noncentralTUpper', 'df', df);
  if (Number.isNaN(t) || !Number.isFinite(delta)) {
    throw new StatisticsError('bad-argument', 'noncentralTUpper', `t ${t}, delta ${delta}`);
  }
  if (t < 0) return 1 - noncentralTUpper(-t, df, -delta);
  if (df === Infinity) return normalUpper(t - delta);
  // Z beyond 40, and S beyond 50 with one degree of freedom or more, are rarer than any number can say.
  if (delta < -farOut) return 0;
  if (df >= 1 && delta - farOut > 50 * t) return 1;
  let sum = 0;
  const step = sumOverChi(df, df + (delta * delta) / 2, Math.log(peak(t, df, delta)), (s, logDensity) => {
    const term = Math.exp(logDensity) * normalUpper(t * s - delta);
    sum += term;
    return term;
  });
  return Math.min(1, sum * step);
}

/** A critical value and its share of an average. */
export interface WeightedPoint {
  readonly t: number;
  readonly weight: number;
}

/**
 * P(|T| > t) of the noncentral t on average over weighted t above 0, weights adding up to 1: both tails of all of them in
 * one sum over s. `delta` is 0 or more.
 */
export function noncentralTBeyond(points: readonly WeightedPoint[], df: number, delta: number): number {
  requirePositive('noncentralTBeyond', 'df', df);
  const middle = points.reduce((sum, { t, weight }) => sum + weight * t, 0);
  if (!(middle > 0 && delta >= 0 && delta < Infinity)) {
    throw new StatisticsError('bad-argument', 'noncentralTBeyond', `t ${middle}, delta ${delta}`);
  }
  if (df >= 1 && points.every(({ t }) => delta - farOut > 50 * t)) return 1;
  let sum = 0;
  const step = sumOverChi(
    df,
    df + (delta * delta) / 2,
    Math.log(peak(middle, df, delta)),
    (s, logDensity) => {
      let beyond = 0;
      for (const { t, weight } of points) {
        const other = t * s + delta;
        beyond += weight * (normalUpper(t * s - delta) + (other > negligible ? 0 : normalUpper(other)));
      }
      const term = Math.exp(logDensity) * beyond;
      sum += term;
      return term;
    },
  );
  return Math.min(1, sum * step);
}

/** Beyond this a normal deviate is rarer than 1e-19, and the tail it is added to never below 1e-5. */
const negligible = 9;

/** Where s^df exp(-df s^2 / 2) P(Z > t s - delta) is about largest. */
function peak(t: number, df: number, delta: number): number {
  if (t <= delta) return 1;
  const sum = df + t * t;
  return (t * delta + Math.sqrt((t * delta) ** 2 + 4 * df * sum)) / (2 * sum);
}
