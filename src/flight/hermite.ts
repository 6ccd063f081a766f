/**
 * Cubic through two points with given slopes (Hermite): value at `share` (0 to 1) of an interval of length `step`.
 */
export function hermite(
  from: number,
  fromSlope: number,
  to: number,
  toSlope: number,
  step: number,
  share: number,
): number {
  const left = 1 - share;
  return (
    from * (1 + 2 * share) * left * left +
    fromSlope * step * share * left * left +
    to * share * share * (3 - 2 * share) -
    toSlope * step * share * share * left
  );
}

/** A place where f falls through 0 between `low` (f > 0) and `high` (f <= 0): bisection, then the secant's last word. */
export function falls(f: (share: number) => number, low: number, high: number): number {
  let above = low;
  let below = high;
  for (let round = 0; round < 52 && below - above > 1e-15; round++) {
    const middle = (above + below) / 2;
    if (f(middle) > 0) above = middle;
    else below = middle;
  }
  return (above + below) / 2;
}
