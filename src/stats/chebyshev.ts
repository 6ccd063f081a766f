import { at } from './at.ts';
/**
 * A function on [from, to] as a sum of Chebyshev polynomials T_0 .. T_degree, from its values at the
 * Chebyshev nodes (Press et al., *Numerical Recipes*, section 5.8).
 */
export interface ChebyshevSeries {
  readonly from: number;
  readonly to: number;
  readonly coefficients: Float64Array;
}

export function chebyshevSeries(
  from: number,
  to: number,
  degree: number,
  f: (x: number) => number,
): ChebyshevSeries {
  const count = degree + 1;
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  const angles = Array.from({ length: count }, (_, i) => (Math.PI * (i + 0.5)) / count);
  const heights = angles.map((angle) => f(middle + half * Math.cos(angle)));
  const coefficients = Float64Array.from({ length: count }, (_, order) => {
    const sum = heights.reduce((total, height, i) => total + height * Math.cos(order * at(angles, i)), 0);
    return (sum * (order === 0 ? 1 : 2)) / count;
  });
  return { from, to, coefficients };
}

/** Value of the series at x (Clenshaw's recurrence). Outside [from, to] it means nothing. */
export function evaluateChebyshev(series: ChebyshevSeries, x: number): number {
  const { from, to, coefficients } = series;
  const y = (2 * x - from - to) / (to - from);
  const twice = 2 * y;
  let last = 0;
  let beforeLast = 0;
  for (let order = coefficients.length - 1; order > 0; order--) {
    const next = twice * last - beforeLast + (coefficients[order] ?? 0);
    beforeLast = last;
    last = next;
  }
  return y * last - beforeLast + (coefficients[0] ?? 0);
}

/** The series' derivative, one degree lower (*Numerical Recipes*, section 5.9). */
export function chebyshevDerivative(series: ChebyshevSeries): ChebyshevSeries {
  const { from, to, coefficients } = series;
  const count = coefficients.length;
  const derivative = new Float64Array(Math.max(1, count - 1));
  const at = (order: number): number => derivative[order] ?? 0;
  for (let order = count - 1; order > 0; order--) {
    derivative[order - 1] = at(order + 1) + 2 * order * (coefficients[order] ?? 0);
  }
  const scale = 2 / (to - from);
  return {
    from,
    to,
    coefficients: derivative.map((value, order) => value * scale * (order === 0 ? 0.5 : 1)),
  };
}
