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

/** Where s^df exp(-df s^2 / 2) P(Z > t s - delta) is about largest. */
function peak(t: number, df: number, delta: number): number {
  if (t <= delta) return 1;
  const sum = df + t * t;
  return (t * delta + Math.sqrt((t * delta) ** 2 + 4 * df * sum)) / (2 * sum);
}
