import { at } from './at.ts';
import { StatisticsError } from './statisticsError.ts';

/** A square matrix, row by row. */
export type Matrix = readonly (readonly number[])[];

/**
 * Lower triangle L with L L' = the matrix (Cholesky). `allowFlat` gives a zero column to a direction without
 * spread instead of refusing it (for drawing; such a matrix cannot be inverted).
 *
 * @throws StatisticsError `no-spread` when the matrix is not positive definite
 */
export function cholesky(name: string, matrix: Matrix, allowFlat = false): Matrix {
  const size = matrix.length;
  const lower: number[][] = matrix.map(() => new Array<number>(size).fill(0));
  for (let j = 0; j < size; j++) {
    const own = at(lower, j);
    const diagonal = at(at(matrix, j), j);
    const left = diagonal - dot(own, own, j);
    const flat = !(left > 1e-13 * diagonal);
    if (flat && !allowFlat)
      throw new StatisticsError('no-spread', name, `no spread left in direction ${j + 1}`);
    own[j] = flat ? 0 : Math.sqrt(left);
    for (let i = j + 1; i < size; i++) {
      const row = at(lower, i);
      row[j] = flat ? 0 : (at(at(matrix, i), j) - dot(row, own, j)) / at(own, j);
    }
  }
  return lower;
}

/** x with L L' x = right, L from `cholesky`. */
export function choleskySolve(lower: Matrix, right: readonly number[]): readonly number[] {
  const size = lower.length;
  const half: number[] = [];
  for (let i = 0; i < size; i++) {
    half[i] = (at(right, i) - dot(at(lower, i), half, i)) / at(at(lower, i), i);
  }
  const x = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    let rest = at(half, i);
    for (let j = i + 1; j < size; j++) rest -= at(at(lower, j), i) * at(x, j);
    x[i] = rest / at(at(lower, i), i);
  }
  return x;
}

/** Inverse of the matrix whose Cholesky triangle is `lower`. */
export function choleskyInverse(lower: Matrix): Matrix {
  return lower.map((_, i) =>
    choleskySolve(
      lower,
      lower.map((_row, j) => (i === j ? 1 : 0)),
    ),
  );
}

function dot(a: readonly number[], b: readonly number[], upTo: number): number {
  let sum = 0;
  for (let i = 0; i < upTo; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}
