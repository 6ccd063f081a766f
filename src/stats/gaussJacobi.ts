import { at } from './at.ts';
import { findRoot } from './findRoot.ts';

/** A value at which a function is taken, and its share of the average. */
interface Node {
  readonly at: number;
  readonly weight: number;
}

/**
 * Gauss-Jacobi quadrature: nodes and weights for the average of a function of y over beta(b + 1, a + 1), density in
 * proportion to y^b (1 - y)^a on 0 to 1; exact for polynomials up to degree 2 count - 1 (Golub & Welsch 1969,
 * Mathematics of Computation 23; recurrence of the Jacobi polynomials in Abramowitz & Stegun 22.7). Weights add up to 1.
 *
 * @param a above -1, a + b above -1
 * @param b above -1
 */
export function gaussJacobi(a: number, b: number, count: number): readonly Node[] {
  const sum = a + b;
  const middle = (k: number): number => {
    const x = k === 0 ? (b - a) / (sum + 2) : (b * b - a * a) / ((2 * k + sum) * (2 * k + sum + 2));
    return (x + 1) / 2;
  };
  const step = (k: number): number => {
    const s = 2 * k + sum;
    return Math.sqrt((k * (k + a) * (k + b) * (k + sum)) / (s * s * (s * s - 1)));
  };
  const middles = Array.from({ length: count }, (_, k) => middle(k));
  const steps = Array.from({ length: count }, (_, k) => step(k + 1));
  /** The orthonormal polynomials up to `order`, at y. */
  const polynomials = (y: number, order: number): readonly number[] => {
    const values = [1];
    for (let k = 0; k < order; k++) {
      const before = k === 0 ? 0 : at(steps, k - 1) * at(values, k - 1);
      values.push(((y - at(middles, k)) * at(values, k) - before) / at(steps, k));
    }
    return values;
  };
  // The zeros of each polynomial lie between those of the one before it.
  let zeros: readonly number[] = [];
  for (let order = 1; order <= count; order++) {
    const ends = [0, ...zeros, 1];
    zeros = ends
      .slice(1)
      .map((end, i) => findRoot((y) => at(polynomials(y, order), order), at(ends, i), end, 1e-15));
  }
  return zeros.map((at) => ({
    at,
    weight: 1 / polynomials(at, count - 1).reduce((squares, value) => squares + value * value, 0),
  }));
}
