import { onceEach } from '../stats/onceEach.ts';
import type { Polynomial, Powers } from './polynomial.ts';

/**
 * A fast evaluator of a sum of polynomials of the same powers on grids of `sizes` values a variable, for tight loops:
 * writes the sums into `out`, the first variable running fastest. `weights` has an array a polynomial: its weight at each
 * value of the last variable. One variable after another is put in, from the last on, by Horner's rule, so that what
 * grid points share is worked out once, and the polynomials are one as soon as the last variable is in.
 */
export function polynomialGrid(
  polynomials: readonly Polynomial[],
  sizes: readonly number[],
): (axes: readonly Float64Array[], weights: readonly Float64Array[], out: Float64Array) => void {
  const { starts, order } = nested(polynomials[0]?.powers ?? []);
  const coefficients = polynomials.map((own) =>
    Float64Array.from(order, (term) => (term < 0 ? 0 : (own.coefficients[term] ?? 0))),
  );
  const last = sizes.length - 1;
  const sums = starts.map((ends, variable) => {
    const points = sizes.slice(variable + 1).reduce((product, size) => product * size, 1);
    return new Float64Array(points * (ends.at(-1) ?? 0));
  });
  return (axes, weights, out) => {
    const together = last === 0 ? out : (sums[last - 1] ?? out);
    const lastAxis = axes[last] ?? out;
    const lastStarts = starts[last] ?? none;
    for (let p = 0; p < coefficients.length; p++) {
      putIn(coefficients[p] ?? out, lastStarts, lastAxis, weights[p] ?? lastAxis, together, p > 0);
    }
    for (let variable = last - 1; variable >= 0; variable--) {
      const axis = axes[variable] ?? out;
      const to = variable === 0 ? out : (sums[variable - 1] ?? out);
      putIn(sums[variable] ?? out, starts[variable] ?? none, axis, null, to, false);
    }
  };
}

const none = new Int32Array(1);

/**
 * From blocks of coefficients in some variables to blocks, one a value of the last of them, in those before it; on top of
 * what `to` holds where told so. Powers to the third, nearly all there are, are written out.
 */
function putIn(
  from: Float64Array,
  starts: Int32Array,
  axis: Float64Array,
  weights: Float64Array | null,
  to: Float64Array,
  onTop: boolean,
): void {
  const groups = starts.length - 1;
  const size = starts[groups] ?? 0;
  let into = 0;
  for (let block = 0; block < from.length; block += size) {
    for (let k = 0; k < axis.length; k++) {
      const x = axis[k] ?? 0;
      const weight = weights === null ? 1 : (weights[k] ?? 0);
      let first = block;
      for (let group = 1; group <= groups; group++) {
        const next = block + (starts[group] ?? 0);
        const terms = next - first;
        let sum = from[next - 1] ?? 0;
        if (terms > 1) sum = sum * x + (from[next - 2] ?? 0);
        if (terms > 2) sum = sum * x + (from[next - 3] ?? 0);
        if (terms > 3) sum = sum * x + (from[next - 4] ?? 0);
        for (let term = next - 5; term >= first; term--) sum = sum * x + (from[term] ?? 0);
        const value = weight * sum;
        to[into] = onTop ? (to[into] ?? 0) + value : value;
        into += 1;
        first = next;
      }
    }
  }
}

/**
 * The terms in order of their powers, the last variable's running fastest and without gaps, as places among `powers` (-1:
 * a gap); by variable, where the powers of each combination of those before it start.
 */
const nested = onceEach(
  (powers: Powers): { readonly starts: readonly Int32Array[]; readonly order: Int32Array } => {
    const variables = powers[0]?.length ?? 0;
    const own = new Map(powers.map((term, at) => [term.join(), at]));
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
    return { starts, order: Int32Array.from(terms, (term) => own.get(term.join()) ?? -1) };
  },
);
