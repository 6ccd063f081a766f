/**
 * A gap between two groups with its interval. `estimate` is the first minus the second, in the values' unit, as
 * are `standardError` and `ci`; `statistic` is estimate / standardError (t scale); `p` is two-sided; `level` is
 * the coverage of `ci` (0.95), simultaneous over all pairs where the method is.
 */
export interface GapInterval {
  readonly estimate: number;
  readonly standardError: number;
  readonly df: number;
  readonly statistic: number;
  readonly p: number;
  readonly ci: readonly [number, number];
  readonly level: number;
}

/** A gap without its interval; `df` are those of its standard error. */
export type EstimatedGap = Pick<GapInterval, 'estimate' | 'standardError' | 'df'>;

/** The gap of groups number `a` minus `b` (places in the list handed in, a < b). */
export interface PairGap extends GapInterval {
  readonly a: number;
  readonly b: number;
}

/** All pairs a < b of k groups, in the order (0,1), (0,2) ... (k-2,k-1). */
export function pairsOf(k: number): readonly (readonly [number, number])[] {
  const pairs: (readonly [number, number])[] = [];
  for (let a = 0; a < k; a++) for (let b = a + 1; b < k; b++) pairs.push([a, b]);
  return pairs;
}
