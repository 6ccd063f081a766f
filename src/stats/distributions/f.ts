import { requirePositive, StatisticsError } from '../statisticsError.ts';
import { betaCdf, betaQuantile, betaUpper, betaUpperQuantile } from './beta.ts';

/** P(F <= f) with `df1` and `df2` degrees of freedom. */
export function fCdf(f: number, df1: number, df2: number): number {
  return tail('fCdf', f, df1, df2, false);
}

/** P(F > f), relative accuracy kept in the far tail. */
export function fUpper(f: number, df1: number, df2: number): number {
  return tail('fUpper', f, df1, df2, true);
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

function tail(name: string, f: number, df1: number, df2: number, upper: boolean): number {
  requirePositive(name, 'df1', df1);
  requirePositive(name, 'df2', df2);
  if (Number.isNaN(f)) throw new StatisticsError('bad-argument', name, 'f is not a number');
  if (f <= 0) return upper ? 1 : 0;
  if (f === Infinity) return upper ? 0 : 1;
  const numerator = df1 * f;
  if (numerator < df2) {
    const share = numerator / (df2 + numerator);
    return upper ? betaUpper(share, df1 / 2, df2 / 2) : betaCdf(share, df1 / 2, df2 / 2);
  }
  const rest = df2 / (df2 + numerator);
  return upper ? betaCdf(rest, df2 / 2, df1 / 2) : betaUpper(rest, df2 / 2, df1 / 2);
}

/** f with P(F > f) = p. */
export function fUpperQuantile(p: number, df1: number, df2: number): number {
  return 1 / fQuantile(p, df2, df1);
}
