import { at } from '../stats/at.ts';
import { once, onceEach } from '../stats/onceEach.ts';
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
function termsAt(powers: Powers, point: readonly number[]): readonly number[] {
  return powers.map((term) => term.reduce((product, power, i) => product * at(point, i) ** power, 1));
}

/**
 * Least squares over a fixed set of points: the work on the points is done when first asked for, and each call fits one
 * list of values. Points should fill the cube from -1 to 1, which keeps the normal equations well enough conditioned.
 *
 * @throws StatisticsError `no-spread` from the first call when the points cannot tell the terms apart
 */
export function polynomialFit(
  powers: Powers,
  points: readonly (readonly number[])[],
): (values: readonly number[]) => Polynomial {
  const normal = once(() => {
    const rows = points.map((point) => termsAt(powers, point));
    const columns = powers.map((_, i) => Float64Array.from(rows, (row) => at(row, i)));
    const products = columns.map(() => new Array<number>(columns.length).fill(0));
    columns.forEach((a, i) => {
      for (let j = 0; j <= i; j++) {
        const product = dot(a, at(columns, j));
        at(products, i)[j] = product;
        at(products, j)[i] = product;
      }
    });
    return { columns, lower: cholesky('polynomialFit', products) };
  });
  return (values) => {
    const { columns, lower } = normal();
    const own = Float64Array.from(values);
    return {
      powers,
      coefficients: choleskySolve(
        lower,
        columns.map((terms) => dot(terms, own)),
      ),
    };
  };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

/** A fast evaluator of a polynomial, for tight loops; what does not hang on coefficients is worked out once. */
export function compiled(polynomial: Polynomial): (point: Float64Array) => number {
  const { size, parent, variable, order } = built(polynomial.powers);
  const coefficients = Float64Array.from(order, (term) => (term < 0 ? 0 : at(polynomial.coefficients, term)));
  const terms = new Float64Array(size).fill(1);
  return (point) => {
    let sum = coefficients[0] ?? 0;
    for (let t = 1; t < size; t++) {
      const term = (terms[parent[t] ?? 0] ?? 1) * (point[variable[t] ?? 0] ?? 0);
      terms[t] = term;
      sum += (coefficients[t] ?? 0) * term;
    }
    return sum;
  };
}

/**
 * How each term is made from another by one multiplication: the term it is made from, the variable it is multiplied by,
 * and its place among `powers` (-1: a divisor that the polynomial does not hold), the constant first.
 */
const built = onceEach((powers: Powers) => {
  const terms = withDivisors(powers);
  const place = new Map(terms.map((term, at) => [term.join(), at]));
  const own = new Map(powers.map((term, at) => [term.join(), at]));
  const last = terms.map((term) => term.findLastIndex((power) => power > 0));
  return {
    size: terms.length,
    variable: Int32Array.from(last),
    parent: Int32Array.from(terms, (term, i) => place.get(divisor(term, at(last, i)).join()) ?? 0),
    order: Int32Array.from(terms, (term) => own.get(term.join()) ?? -1),
  };
});

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
