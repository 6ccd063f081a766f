import gammaln from '@stdlib/math-base-special-gammaln';

/**
 * Density of u = ln(s), where s = sqrt(chi-square(df) / df): exp(constant + df (u - (e^2u - 1) / 2)).
 * This gives the constant. By the remainder of Stirling's series, so that no digits are lost at large df.
 */
export function logChiConstant(df: number): number {
  const z = df / 2;
  return Math.LN2 + 0.5 * Math.log(z / (2 * Math.PI)) - stirlingRemainder(z);
}

/** ln Gamma(z) - ((z - 1/2) ln z - z + ln(2 pi) / 2); Abramowitz & Stegun 6.1.41 from z = 10. */
function stirlingRemainder(z: number): number {
  if (z < 10) return gammaln(z) - ((z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI));
  const r = 1 / (z * z);
  const series =
    1 / 12 - r * (1 / 360 - r * (1 / 1260 - r * (1 / 1680 - r * (1 / 1188 - (r * 691) / 360360))));
  return series / z;
}
