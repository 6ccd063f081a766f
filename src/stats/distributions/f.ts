import { requirePositive, StatisticsError } from '../statisticsError.ts';
import { betaCdf, betaQuantile, betaUpper, betaUpperQuantile } from './beta.ts';

/** P(F > f) with `df1` and `df2` degrees of freedom, relative accuracy kept in the far tail. */
export function fUpper(f: number, df1: number, df2: number): number {
  requirePositive('fUpper', 'df1', df1);
  requirePositive('fUpper', 'df2', df2);
  if (Number.isNaN(f)) throw new StatisticsError('bad-argument', 'fUpper', 'f is not a number');
  if (f <= 0) return 1;
  if (f === Infinity) return 0;
  const numerator = df1 * f;
  return numerator < df2
    ? betaUpper(numerator / (df2 + numerator), df1 / 2, df2 / 2)
    : betaCdf(df2 / (df2 + numerator), df2 / 2, df1 / 2);
}

/** f with P(F <= f) = p. */
export function fQuantile(p: number, df1: number, df2: number): number {
  requirePositive('fQuantile', 'df1', df1);
  requirePositive('fQuantile', 'df2', df2);
  const share = betaQuantile(p, df1 / 2, df2 / 2);
  if (share <= 0.5) return (df2 * share) / (df1 * (1 - share));
  // near 1 the complement is asked for by name, else 1 - share has no digits left
  const rest = betaUpperQuantile(p, df2 / 2, df1 / 2);
  return (df2 * (1 - rest)) / (df1 * rest);
}
