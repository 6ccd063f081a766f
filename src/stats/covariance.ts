import { at } from './at.ts';
import { compensatedSumOf } from './compensatedSum.ts';
import { requireAtLeast, requireFinite, StatisticsError } from './statisticsError.ts';
import type { Matrix } from './symmetricMatrix.ts';

/** Means and sample covariance matrix (divisor n - 1) of rows of p values. */
export interface Covariance {
  readonly n: number;
  readonly means: readonly number[];
  readonly matrix: Matrix;
}

/** @throws StatisticsError `sample-too-small` under two rows, `bad-argument` for ragged or non-finite rows */
export function covariance(rows: readonly (readonly number[])[]): Covariance {
  requireAtLeast('covariance', 'rows', rows.length, 2);
  const size = at(rows, 0).length;
  if (size === 0 || rows.some((row) => row.length !== size)) {
    throw new StatisticsError('bad-argument', 'covariance', 'rows differ in length or are empty');
  }
  rows.forEach((row) => requireFinite('covariance', row));
  const means = Array.from(
    { length: size },
    (_, j) => compensatedSumOf(rows, (row) => at(row, j)) / rows.length,
  );
  const centred = rows.map((row) => row.map((value, j) => value - at(means, j)));
  const entry = (i: number, j: number): number =>
    compensatedSumOf(centred, (row) => at(row, i) * at(row, j)) / (rows.length - 1);
  const matrix = means.map((_, i) => means.map((_mean, j) => entry(Math.max(i, j), Math.min(i, j))));
  return { n: rows.length, means, matrix };
}
