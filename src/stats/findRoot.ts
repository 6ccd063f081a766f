import { StatisticsError } from './statisticsError.ts';

/**
 * Root of a continuous f between two ends of opposite sign: Chandrupatla 1997 (Advances in Engineering Software
 * 28), inverse quadratic steps that fall back on bisection. Stops when the bracket is within `relative` of the
 * root or f is 0.
 *
 * @throws StatisticsError `bad-argument` when the ends do not differ in sign
 */
export function findRoot(f: (x: number) => number, low: number, high: number, relative = 1e-13): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) {
    throw new StatisticsError('bad-argument', 'findRoot', `no change of sign between ${low} and ${high}`);
  }
  let share = 0.5;
  for (let round = 0; round < 200; round++) {
    const x = a + share * (b - a);
    const fx = f(x);
    const sameSide = Math.sign(fx) === Math.sign(fa);
    const c = sameSide ? a : b;
    const fc = sameSide ? fa : fb;
    if (!sameSide) {
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const nearest = Math.abs(fa) < Math.abs(fb) ? a : b;
    const tolerance = relative * Math.abs(nearest) + 1e-300;
    const limit = tolerance / Math.abs(b - a);
    if (fx === 0 || limit > 0.5) return nearest;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const quadratic = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    share = quadratic
      ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
      : 0.5;
    share = Math.min(1 - limit, Math.max(limit, share));
  }
  return a;
}
