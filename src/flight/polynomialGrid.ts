import type { Polynomial } from './polynomial.ts';

/**
 * A fast evaluator of a polynomial on grids of `sizes` values a variable, for tight loops: writes the values into
 * `out`, the first variable running fastest. One variable after another is put in, from the last on, by Horner's rule,
 * so that what grid points share is worked out once.
 */
export function polynomialGrid(
  polynomial: Polynomial,
  sizes: readonly number[],
): (axes: readonly Float64Array[], out: Float64Array) => void {
  const { starts, coefficients } = nested(polynomial, sizes.length);
  const last = sizes.length - 1;
  const sums = starts.map((ends, variable) => {
    const points = sizes.slice(variable + 1).reduce((product, size) => product * size, 1);
    return variable === last ? coefficients : new Float64Array(points * (ends.at(-1) ?? 0));
  });
  return (axes, out) => {
    for (let variable = last; variable >= 0; variable--) {
      putIn(
        sums[variable] ?? coefficients,
        starts[variable] ?? none,
        axes[variable] ?? out,
        variable === 0 ? out : (sums[variable - 1] ?? out),
      );
    }
  };
}

const none = new Int32Array(1);

/** From blocks of coefficients in some variables to blocks, one a value of the last of them, in those before it. */
function putIn(from: Float64Array, starts: Int32Array, axis: Float64Array, to: Float64Array): void {
  const groups = starts.length - 1;
  const size = starts[groups] ?? 0;
  let into = 0;
  for (let block = 0; block < from.length; block += size) {
    for (let k = 0; k < axis.length; k++) {
      const value = axis[k] ?? 0;
      for (let group = 0; group < groups; group++) {
        const first = block + (starts[group] ?? 0);
        let sum = 0;
        for (let term = block + (starts[group + 1] ?? 0) - 1; term >= first; term--) {
          sum = sum * value + (from[term] ?? 0);
        }
        to[into] = sum;
        into += 1;
      }
    }
  }
}

/**
 * The terms in order of their powers, the last variable's running fastest and without gaps; by variable, where the
 * powers of each combination of those before it start.
 */
function nested(
  { powers, coefficients }: Polynomial,
  variables: number,
): { readonly starts: readonly Int32Array[]; readonly coefficients: Float64Array } {
  const own = new Map(powers.map((term, at) => [term.join(), coefficients[at] ?? 0]));
  let terms: readonly (readonly number[])[] = [[]];
  const starts: Int32Array[] = [];
  for (let variable = 0; variable < variables; variable++) {
    const most = terms.map((term) =>
      Math.max(
        0,
        ...powers
          .filter((power) => term.every((p, i) => power[i] === p))
          .map((power) => power[variable] ?? 0),
      ),
    );
    const ends = most.reduce<readonly number[]>(
      (sums, power) => [...sums, (sums.at(-1) ?? 0) + power + 1],
      [0],
    );
    starts.push(Int32Array.from(ends));
    terms = terms.flatMap((term, at) =>
      Array.from({ length: (most[at] ?? 0) + 1 }, (_, power) => [...term, power]),
    );
  }
  return { starts, coefficients: Float64Array.from(terms, (term) => own.get(term.join()) ?? 0) };
}
