import { evaluateChebyshev } from '../chebyshev.ts';
import { StatisticsError, requireFraction, requirePositive } from '../statisticsError.ts';
import { logChiConstant } from './logChiDensity.ts';
import { normalRange, pieceOf, WIDEST_RANGE, type Piece } from './normalRange.ts';
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
  const term = (w: number, weightLog: number, s: number, into: Sums): number => {
    if (w >= WIDEST_RANGE) return 0;
    const piece: Piece = table.upper(pieceOf(w));
    const weight = Math.exp(weightLog - (w * w) / 4);
    const scaled = evaluateChebyshev(piece.value, w);
    const value = weight * scaled;
    into.value += value;
    into.slope += weight * s * (evaluateChebyshev(piece.slope, w) - (w / 2) * scaled);
    return value;
  };
  // the far tail is made by small deviations S: the sum starts where density times exp(-w^2 / 4) peaks
  return outerSum(q, df, df, -0.5 * Math.log1p((q * q) / (2 * df)), term);
}

function lowerTail(q: number, k: number, df: number): Tail {
  const table = normalRange(k);
  const term = (w: number, weightLog: number, s: number, into: Sums): number => {
    const weight = Math.exp(weightLog);
    if (w >= WIDEST_RANGE) {
      into.value += weight;
      return weight;
    }
    const piece: Piece = table.lower(pieceOf(w));
    const power = weight * w ** (k - 2);
    const scaled = evaluateChebyshev(piece.value, w);
    const value = power * w * scaled;
    into.value += value;
    into.slope += power * s * (w * evaluateChebyshev(piece.slope, w) + (k - 1) * scaled);
    return value;
  };
  return outerSum(q, df, df + k - 1, 0, term);
}

interface Sums {
  value: number;
  slope: number;
}

/** Sum over u on a grid through `start`, outward both ways until a term no longer counts. */
function outerSum(
  q: number,
  df: number,
  sharpness: number,
  start: number,
  term: (w: number, weightLog: number, s: number, into: Sums) => number,
): Tail {
  const sums: Sums = { value: 0, slope: 0 };
  if (df === Infinity) {
    term(q, 0, 1, sums);
    return sums;
  }
  const constant = logChiConstant(df);
  const step = Math.min(0.12, 0.55 / Math.sqrt(2 * sharpness));
  for (const direction of [1, -1]) {
    for (let j = direction === 1 ? 0 : 1; ; j++) {
      const u = start + direction * j * step;
      const s = Math.exp(u);
      const added = term(q * s, constant + df * (u - Math.expm1(2 * u) / 2), s, sums);
      if (!(added > 1e-17 * sums.value)) break;
    }
  }
  return { value: sums.value * step, slope: sums.slope * step };
}
