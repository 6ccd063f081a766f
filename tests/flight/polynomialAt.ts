import type { Polynomial } from '../../src/flight/polynomial.ts';
import { at } from '../stats/close.ts';

/** A polynomial at a point, term by term. */
export function polynomialAt({ powers, coefficients }: Polynomial, point: readonly number[]): number {
  const terms = powers.map((term) => term.reduce((product, power, i) => product * at(point, i) ** power, 1));
  return terms.reduce((sum, term, i) => sum + term * at(coefficients, i), 0);
}
