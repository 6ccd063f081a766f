import { cholesky, choleskySolve } from '../stats/symmetricMatrix.ts';

/** Which powers of each variable a polynomial's terms hold: one row a term. */
export type Powers = readonly (readonly number[])[];

/** A polynomial of several variables. */
export interface Polynomial {
  readonly powers: Powers;
  readonly coefficients: readonly number[];
}

/** Powers of all terms up to a total degree that `keep` lets through. */
export function powersUpTo(
  variables: number,
  degree: number,
  keep: (powers: readonly number[]) => boolean = () => true,
): Powers {
  const grown = (left: number, used: number): readonly (readonly number[])[] =>
    left === 0
      ? [[]]
      : Array.from({ length: degree - used + 1 }, (_, power) => power).flatMap((power) =>
          grown(left - 1, used + power).map((rest) => [power, ...rest]),
        );
  return grown(variables, 0).filter(keep);
}

/** Every term's product at a point. */
export function termsAt(powers: Powers, point: readonly number[]): readonly number[] {
  return powers.map((term) => term.reduce((product, power, i) => product * (point[i] ?? 0) ** power, 1));
}

export function polynomialAt({ powers, coefficients }: Polynomial, point: readonly number[]): number {
  return termsAt(powers, point).reduce((sum, term, i) => sum + term * (coefficients[i] ?? 0), 0);
}

/**
 * Least squares over a fixed set of points: the work on the points is done once, and each call fits one list of
 * values. Points should fill the cube from -1 to 1, which keeps the normal equations well enough conditioned.
 *
 * @throws StatisticsError `no-spread` when the points cannot tell the terms apart
 */
export function polynomialFit(
  powers: Powers,
  points: readonly (readonly number[])[],
): (values: readonly number[]) => Polynomial {
  const rows = points.map((point) => termsAt(powers, point));
  const column = (i: number): readonly number[] => rows.map((row) => row[i] ?? 0);
  const columns = powers.map((_, i) => column(i));
  const product = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
  const lower = cholesky(
    'polynomialFit',
    columns.map((a) => columns.map((b) => product(a, b))),
  );
  return (values) => ({
    powers,
    coefficients: choleskySolve(
      lower,
      columns.map((terms) => product(terms, values)),
    ),
  });
}

/**
 * A fast evaluator of several polynomials with the same powers, for tight loops: writes their values into `out`.
 * Each term is made from another by one multiplication; divisors that no polynomial holds come in with weight 0.
 */
export function compiled(
  polynomials: readonly Polynomial[],
): (point: Float64Array, out: Float64Array) => void {
  const asked = polynomials[0]?.powers ?? [];
  const powers = withDivisors(asked);
  const size = powers.length;
  const place = new Map(powers.map((term, at) => [term.join(), at]));
  const last = powers.map((term) => term.findLastIndex((power) => power > 0));
  const variable = Int32Array.from(last);
  const parent = Int32Array.from(powers, (term, at) => place.get(divisor(term, last[at] ?? 0).join()) ?? 0);
  const coefficients = polynomials.map((polynomial) => {
    const own = new Map(polynomial.powers.map((term, i) => [term.join(), polynomial.coefficients[i] ?? 0]));
    return Float64Array.from(powers, (term) => own.get(term.join()) ?? 0);
  });
  const terms = new Float64Array(size).fill(1);
  return (point, out) => {
    for (let t = 1; t < size; t++) {
      terms[t] = (terms[parent[t] ?? 0] ?? 1) * (point[variable[t] ?? 0] ?? 0);
    }
    for (let p = 0; p < coefficients.length; p++) {
      const own = coefficients[p] ?? terms;
      let sum = 0;
      for (let t = 0; t < size; t++) sum += (own[t] ?? 0) * (terms[t] ?? 0);
      out[p] = sum;
    }
  };
}

/** The terms and all that they are built from, the constant first, none before what it is built from. */
function withDivisors(powers: Powers): Powers {
  const all = new Map<string, readonly number[]>();
  const add = (term: readonly number[]): void => {
    if (all.has(term.join())) return;
    const last = term.findLastIndex((power) => power > 0);
    if (last >= 0) add(divisor(term, last));
    all.set(term.join(), term);
  };
  powers.forEach(add);
  return [...all.values()];
}

/** The term with one power less of a variable. */
function divisor(term: readonly number[], variable: number): readonly number[] {
  return term.map((power, i) => (i === variable ? power - 1 : power));
}
