import { logChiConstant } from './logChiDensity.ts';

/**
 * Average of a function of s over the distribution of s = sqrt(chi-square(df) / df), by the trapezoidal rule in
 * u = ln s. The density dies at both ends and is analytic, so the sum converges geometrically (Trefethen &
 * Weideman 2014, "The exponentially convergent trapezoidal rule", SIAM Review 56).
 *
 * @param df finite, above 0
 * @param sharpness how fast density and function together bend: the step is 0.55 / sqrt(2 sharpness) at most
 * @param start u near the peak of density times function; the sum goes outward from here, both ways, until a
 * term no longer counts
 * @param add adds the term at s = e^u with density e^logDensity to the caller's sums, returns its size
 * @returns the step, by which the caller's sums are to be multiplied
 */
export function sumOverChi(
  df: number,
  sharpness: number,
  start: number,
  add: (s: number, logDensity: number) => number,
): number {
  const constant = logChiConstant(df);
  const step = Math.min(0.12, 0.55 / Math.sqrt(2 * sharpness));
  let sum = 0;
  for (const direction of [1, -1]) {
    for (let j = direction === 1 ? 0 : 1; ; j++) {
      const u = start + direction * j * step;
      const added = add(Math.exp(u), constant + df * (u - Math.expm1(2 * u) / 2));
      sum += added;
      if (!(added > 1e-17 * sum)) break;
    }
  }
  return step;
}
