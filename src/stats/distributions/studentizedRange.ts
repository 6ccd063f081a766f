import { evaluateChebyshev } from '../chebyshev.ts';
import { StatisticsError, requireFraction, requirePositive } from '../statisticsError.ts';
import { normalRangePiece, WIDEST_RANGE } from './normalRange.ts';
import { sumOverChi } from './sumOverChi.ts';
import { tQuantile } from './t.ts';

/**
 * The studentized range Q = W / S: the range of k independent normals over an independent standard deviation
 * with `df` degrees of freedom (any df >= 1, infinity included).
 *
 * Method: P(Q > q) = Int f(u) P(W > q e^u) du, u the log of S / sigma, by the trapezoidal rule, which converges
 * geometrically here because the integrand is analytic and dies at both ends; P(W > w) from
 * `normalRangePiece`. Definition: Tukey 1953; Lund & Lund 1983 (AS 190) for the integral.
 */
export function studentizedRangeUpper(q: number, k: number, df: number): number {
  check('studentizedRangeUpper', q, k, df);
  if (q <= 0) return 1;
  return Math.min(1, upperTail(q, k, df).value);
}

/**
 * q with P(Q <= q) = p, 0.5 <= p < 1: Newton's method on the log of the upper tail against log q, which is nearly
 * straight for few df and bends gently for many.
 * @throws StatisticsError `bad-argument` outside the domain
 */
export function studentizedRangeQuantile(p: number, k: number, df: number): number {
  requireFraction('studentizedRangeQuantile', 'p', p);
  check('studentizedRangeQuantile', 0, k, df);
  if (p < 0.5)
    throw new StatisticsError('bad-argument', 'studentizedRangeQuantile', `p must be at least 0.5, got ${p}`);
  const target = Math.log(1 - p);
  let logQ = Math.log(firstGuess(p, k, df));
  for (let round = 0; round < 60; round++) {
    const { value, slope } = upperTail(Math.exp(logQ), k, df);
    if (!(value > 0)) {
      logQ -= 1;
      continue;
    }
    const step = ((target - Math.log(value)) * value) / (slope * Math.exp(logQ));
    logQ += Math.max(-1.5, Math.min(1.5, step));
    if (Math.abs(step) < 1e-7) return Math.exp(logQ);
  }
  throw new StatisticsError(
    'bad-argument',
    'studentizedRangeQuantile',
    `no solution for p ${p}, k ${k}, df ${df}`,
  );
}

interface Tail {
  readonly value: number;
  /** change per unit of q */
  readonly slope: number;
}

function check(name: string, q: number, k: number, df: number): void {
  requirePositive(name, 'df', df);
  if (Number.isNaN(q)) throw new StatisticsError('bad-argument', name, 'q is not a number');
  if (!(Number.isInteger(k) && k >= 2)) {
    throw new StatisticsError('bad-argument', name, `k must be a whole number of groups from 2, got ${k}`);
  }
}

/** Every pair apart as if independent (Sidak): exact for two groups, a little high beyond. */
function firstGuess(p: number, k: number, df: number): number {
  const each = p ** (2 / (k * (k - 1)));
  return Math.max(1e-6, Math.SQRT2 * tQuantile((1 + each) / 2, df));
}

function upperTail(q: number, k: number, df: number): Tail {
  let value = 0;
  let slope = 0;
  const add = (s: number, logDensity: number): number => {
    const w = q * s;
    if (w >= WIDEST_RANGE) return 0;
    const piece = normalRangePiece(k, w);
    const weight = Math.exp(logDensity - (w * w) / 4);
    const scaled = evaluateChebyshev(piece.value, w);
    value += weight * scaled;
    slope += weight * s * (evaluateChebyshev(piece.slope, w) - (w / 2) * scaled);
    return weight * scaled;
  };
  if (df === Infinity) {
    add(1, 0);
    return { value, slope };
  }
  // the far tail is made by small deviations S: the sum starts where density times exp(-w^2 / 4) peaks
  const step = sumOverChi(df, df, -0.5 * Math.log1p((q * q) / (2 * df)), add);
  return { value: value * step, slope: slope * step };
}
