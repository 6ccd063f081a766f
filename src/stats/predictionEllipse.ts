import { at } from './at.ts';
import { covariance } from './covariance.ts';
import { fQuantile } from './distributions/f.ts';
import { requireAtLeast, requireFraction, StatisticsError } from './statisticsError.ts';

/** An ellipse: half-axes (major first) in the values' unit, `angle` of the major one from x, in radians. */
export interface Ellipse {
  readonly centre: readonly [number, number];
  readonly halfAxes: readonly [number, number];
  readonly angle: number;
  readonly correlation: number;
  /** multiplies the sample standard deviation along each axis */
  readonly factor: number;
}

/**
 * Region that holds the next point with probability `level`, points bivariate normal: Mahalanobis distance
 * squared at most 2 (n + 1)(n - 1) / (n (n - 2)) F(level; 2, n - 2) (Hotelling 1931; Chew 1966, JASA 61).
 *
 * @throws StatisticsError `sample-too-small` under three points, `no-spread` when they lie on a line
 */
export function predictionEllipse(points: readonly (readonly [number, number])[], level: number): Ellipse {
  requireFraction('predictionEllipse', 'level', level);
  requireAtLeast('predictionEllipse', 'points', points.length, 3);
  const { n, means, matrix } = covariance(points);
  const xx = at(at(matrix, 0), 0);
  const yy = at(at(matrix, 1), 1);
  const xy = at(at(matrix, 0), 1);
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 1e-13 * xx * yy)) {
    throw new StatisticsError('no-spread', 'predictionEllipse', 'the points lie on a line');
  }
  const half = (xx + yy) / 2;
  const apart = Math.hypot((xx - yy) / 2, xy);
  const major = half + apart;
  // the smaller eigenvalue by way of the determinant: half - apart would cancel
  const minor = determinant / major;
  const factor = Math.sqrt(((2 * (n + 1) * (n - 1)) / (n * (n - 2))) * fQuantile(level, 2, n - 2));
  return {
    centre: [at(means, 0), at(means, 1)],
    halfAxes: [factor * Math.sqrt(major), factor * Math.sqrt(minor)],
    angle: 0.5 * Math.atan2(2 * xy, xx - yy),
    correlation: xy / Math.sqrt(xx * yy),
    factor,
  };
}
