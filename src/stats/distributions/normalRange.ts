import { chebyshevDerivative, chebyshevSeries, type ChebyshevSeries } from '../chebyshev.ts';
import { normalUpper } from './normal.ts';

/**
 * Distribution of the range W (largest minus smallest) of k independent standard normals, tabulated once a k as
 * Chebyshev series on pieces of width 2, because the studentized range asks for it some thirty times a call.
 *
 * Both tails are stored scaled to something flat, so that a series keeps its relative accuracy however small
 * the tail: upper(w) = P(W > w) exp(w^2 / 4) and lower(w) = P(W <= w) / w^(k - 1).
 */
export interface NormalRange {
  /** P(W > w) exp(w^2 / 4) on 0 <= w < WIDEST_RANGE, piece by piece. */
  readonly upper: (piece: number) => Piece;
  /** P(W <= w) / w^(k - 1), the same way. */
  readonly lower: (piece: number) => Piece;
}

/** One piece of a tabulated function and its derivative. Piece number i covers 2i <= w < 2i + 2. */
export interface Piece {
  readonly value: ChebyshevSeries;
  readonly slope: ChebyshevSeries;
}

/** Beyond this many standard deviations P(W > w) is below 1e-170 and taken as 0. */
export const WIDEST_RANGE = 40;

const PIECE_WIDTH = 2;
const DEGREE = 24;
/** Trapezoidal grid over the middle of the range; the integrands are entire and die within nine deviations. */
const STEP = 0.125;
const GRID = Array.from({ length: 145 }, (_, i) => (i - 72) * STEP);

const tables = new Map<number, NormalRange>();

/** The table for k >= 2 normals, built on first use. */
export function normalRange(k: number): NormalRange {
  const known = tables.get(k);
  if (known !== undefined) return known;
  const table = {
    upper: tabulated((w) => Math.exp((w * w) / 4) * normalRangeUpper(w, k)),
    lower: tabulated((w) => normalRangeCdf(w, k) / w ** (k - 1)),
  };
  tables.set(k, table);
  return table;
}

export function pieceOf(w: number): number {
  return Math.floor(w / PIECE_WIDTH);
}

/**
 * P(W > w) = k Int phi(x) [a^(k-1) - (a - c)^(k-1)] dx with a = P(Z > x), c = P(Z > x + w), x the smallest of
 * the k; the bracket is expanded as c times a sum of positive terms, so nothing cancels.
 */
export function normalRangeUpper(w: number, k: number): number {
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

/** P(W <= w) = k Int phi(x) [P(x < Z <= x + w)]^(k-1) dx, x the smallest; the bracket from the nearer tail. */
export function normalRangeCdf(w: number, k: number): number {
  let sum = 0;
  for (const x of GRID) {
    const right = x + w / 2 > 0;
    const between = right ? normalUpper(x) - normalUpper(x + w) : normalUpper(-x - w) - normalUpper(-x);
    sum += density(x) * between ** (k - 1);
  }
  return k * STEP * sum;
}

function density(x: number): number {
  return Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
}

function tabulated(f: (w: number) => number): (piece: number) => Piece {
  const pieces: Piece[] = [];
  return (piece) => {
    const known = pieces[piece];
    if (known !== undefined) return known;
    const value = chebyshevSeries(piece * PIECE_WIDTH, (piece + 1) * PIECE_WIDTH, DEGREE, f);
    const made = { value, slope: chebyshevDerivative(value) };
    pieces[piece] = made;
    return made;
  };
}
