import { evaluateChebyshev } from '../chebyshev.ts';
import { StatisticsError, requireFraction, requirePositive } from '../statisticsError.ts';
import { normalRange, pieceOf, WIDEST_RANGE } from './normalRange.ts';
import { sumOverChi } from './sumOverChi.ts';
import { tQuantile } from './t.ts';

/**
 * The studentized range Q = W / S: the range of k independent normals over an independent standard deviation
 * with `df` degrees of freedom (any df >= 1, infinity included).
 *
 * Method: P(Q > q) = Int f(u) P(W > q e^u) du, u the log of S / sigma, by the trapezoidal rule, which converges
 * geometrically here because the integrand is analytic and dies at both ends; P(W > w) from the table of
 * `normalRange`. Definition: Tukey 1953; Lund & Lund 1983 (AS 190) for the integral.
 */
export function studentizedRangeUpper(q: number, k: number, df: number): number {
  check('studentizedRangeUpper', q, k, df);
  if (q <= 0) return 1;
  return Math.min(1, upperTail(q, k, df).value);
}

/** P(Q <= q); relative accuracy kept in the lower tail too. */
export function studentizedRangeCdf(q: number, k: number, df: number): number {
  check('studentizedRangeCdf', q, k, df);
  if (q <= 0) return 0;
  const upper = upperTail(q, k, df).value;
  return upper < 0.5 ? 1 - upper : lowerTail(q, k, df).value;
}

/**
 * q with P(Q <= q) = p, 0 < p < 1: Newton's method on the log of the smaller tail against log q, which is nearly
 * straight for few df and bends gently for many.
 * @throws StatisticsError `bad-argument` outside the domain
 */
export function studentizedRangeQuantile(p: number, k: number, df: number): number {
  requireFraction('studentizedRangeQuantile', 'p', p);
  check('studentizedRangeQuantile', 0, k, df);
  const useUpper = p > 0.5;
  const tail = useUpper ? upperTail : lowerTail;
  const target = Math.log(useUpper ? 1 - p : p);
  let logQ = Math.log(firstGuess(p, k, df));
  for (let round = 0; round < 60; round++) {
    const { value, slope } = tail(Math.exp(logQ), k, df);
    if (!(value > 0)) {
      logQ -= useUpper ? 1 : -1;
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
  const table = normalRange(k);
  let value = 0;
  let slope = 0;
  const add = (s: number, logDensity: number): number => {
    const w = q * s;
    if (w >= WIDEST_RANGE) return 0;
    const piece = table.upper(pieceOf(w));
    const weight = Math.exp(logDensity - (w * w) / 4);
    const scaled = evaluateChebyshev(piece.value, w);
    value += weight * scaled;
    slope += weight * s * (evaluateChebyshev(piece.slope, w) - (w / 2) * scaled);
    return weight * scaled;
  };
  // the far tail is made by small deviations S: the sum starts where density times exp(-w^2 / 4) peaks
  return averaged(df, df, -0.5 * Math.log1p((q * q) / (2 * df)), add, () => ({ value, slope }));
}

function lowerTail(q: number, k: number, df: number): Tail {
  const table = normalRange(k);
  let value = 0;
  let slope = 0;
  const add = (s: number, logDensity: number): number => {
    const w = q * s;
    const weight = Math.exp(logDensity);
    if (w >= WIDEST_RANGE) {
      value += weight;
      return weight;
    }
    const piece = table.lower(pieceOf(w));
    const power = weight * w ** (k - 2);
    const scaled = evaluateChebyshev(piece.value, w);
    value += power * w * scaled;
    slope += power * s * (w * evaluateChebyshev(piece.slope, w) + (k - 1) * scaled);
    return power * w * scaled;
  };
  return averaged(df, df + k - 1, 0, add, () => ({ value, slope }));
}

/** Both sums over S, or the one term at S = 1 when the standard deviation is known. */
function averaged(
  df: number,
  sharpness: number,
  start: number,
  add: (s: number, logDensity: number) => number,
  sums: () => Tail,
): Tail {
  if (df === Infinity) {
    add(1, 0);
    return sums();
  }
  const step = sumOverChi(df, sharpness, start, add);
  const { value, slope } = sums();
  return { value: value * step, slope: slope * step };
}
