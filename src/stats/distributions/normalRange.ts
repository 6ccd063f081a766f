import { chebyshevDerivative, chebyshevSeries, type ChebyshevSeries } from '../chebyshev.ts';
import { normalUpper } from './normal.ts';

/** One piece of a tabulated function and its derivative. */
interface Piece {
  readonly value: ChebyshevSeries;
  readonly slope: ChebyshevSeries;
}

/** Beyond this many standard deviations P(W > w) is below 1e-170 and taken as 0. */
export const WIDEST_RANGE = 40;

const PIECE_WIDTH = 2;
const DEGREE = 24;
/** Trapezoidal grid over the middle of the range; the integrand is entire and dies within nine deviations. */
const STEP = 0.125;
const GRID = Array.from({ length: 145 }, (_, i) => (i - 72) * STEP);

/** Pieces by the number of normals; piece number i covers 2i <= w < 2i + 2. */
const tables = new Map<number, Piece[]>();

/**
 * P(W > w) exp(w^2 / 4) near w, 0 <= w < WIDEST_RANGE, for the range W (largest minus smallest) of k >= 2 independent
 * standard normals: scaled to something flat, so that a series keeps its relative accuracy however small the tail.
 * Made when first asked for, because the studentized range asks some thirty times a call.
 */
export function normalRangePiece(k: number, w: number): Piece {
  let pieces = tables.get(k);
  if (pieces === undefined) tables.set(k, (pieces = []));
  const place = Math.floor(w / PIECE_WIDTH);
  return (pieces[place] ??= pieceAt(place, k));
}

function pieceAt(place: number, k: number): Piece {
  const scaled = (w: number): number => Math.exp((w * w) / 4) * rangeUpper(w, k);
  const value = chebyshevSeries(place * PIECE_WIDTH, (place + 1) * PIECE_WIDTH, DEGREE, scaled);
  return { value, slope: chebyshevDerivative(value) };
}

/**
 * P(W > w) = k Int phi(x) [a^(k-1) - (a - c)^(k-1)] dx with a = P(Z > x), c = P(Z > x + w), x the smallest of
 * the k; the bracket is expanded as c times a sum of positive terms, so nothing cancels.
 */
function rangeUpper(w: number, k: number): number {
  let sum = 0;
  for (const x of GRID) {
    const a = normalUpper(x - w / 2);
    const c = normalUpper(x + w / 2);
    let terms = 0;
    for (let j = 0; j < k - 1; j++) terms = terms * (a - c) + a ** j;
    sum += density(x - w / 2) * c * terms;
  }
  return k * STEP * sum;
}

function density(x: number): number {
  return Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
}
