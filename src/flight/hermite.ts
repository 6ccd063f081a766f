import { findRoot } from '../stats/findRoot.ts';

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

/** A place where f falls through 0 between `low` (f > 0) and `high` (f <= 0); the end that comes next where it does not. */
export function falls(f: (share: number) => number, low: number, high: number): number {
  if (!(f(low) > 0)) return low;
  if (f(high) > 0) return high;
  return findRoot(f, low, high);
}
