import betainc from '@stdlib/math-base-special-betainc';
import betaincinv from '@stdlib/math-base-special-betaincinv';
import { requirePositive, StatisticsError } from '../statisticsError.ts';

/** P(B <= x), beta distribution with shapes a, b. */
export function betaCdf(x: number, a: number, b: number): number {
  return tail('betaCdf', x, a, b, false);
}

/** P(B > x), relative accuracy kept in the far tail. */
export function betaUpper(x: number, a: number, b: number): number {
  return tail('betaUpper', x, a, b, true);
}

/** x with P(B <= x) = p. */
export function betaQuantile(p: number, a: number, b: number): number {
  return quantile('betaQuantile', p, a, b, false);
}

/** x with P(B > x) = p. */
export function betaUpperQuantile(p: number, a: number, b: number): number {
  return quantile('betaUpperQuantile', p, a, b, true);
}

function tail(name: string, x: number, a: number, b: number, upper: boolean): number {
  requirePositive(name, 'shape a', a);
  requirePositive(name, 'shape b', b);
  if (Number.isNaN(x)) throw new StatisticsError('bad-argument', name, 'x is not a number');
  if (x <= 0) return upper ? 1 : 0;
  if (x >= 1) return upper ? 0 : 1;
  return betainc(x, a, b, true, upper);
}

function quantile(name: string, p: number, a: number, b: number, upper: boolean): number {
  requirePositive(name, 'shape a', a);
  requirePositive(name, 'shape b', b);
  if (!(p >= 0 && p <= 1)) throw new StatisticsError('bad-argument', name, `p must be 0 to 1, got ${p}`);
  if (p === 0) return upper ? 1 : 0;
  if (p === 1) return upper ? 0 : 1;
  return betaincinv(p, a, b, upper);
}
