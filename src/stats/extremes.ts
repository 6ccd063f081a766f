/** The least of values of any count, Infinity of none; `Math.min(...values)` overflows the stack from some 120,000 up. */
export function leastOf(values: Iterable<number>): number {
  let least = Infinity;
  for (const value of values) least = Math.min(least, value);
  return least;
}

/** The greatest of values of any count, -Infinity of none. */
export function greatestOf(values: Iterable<number>): number {
  let greatest = -Infinity;
  for (const value of values) greatest = Math.max(greatest, value);
  return greatest;
}
