/** What a test is judged by, and so what it can find. */
export type JudgedBy =
  | { readonly kind: 'shots' }
  /** Two groups by the differences of rounds, from so many rounds on; else by shots. */
  | { readonly kind: 'rounds'; readonly pairedFrom: number }
  /** By shots, and a gap must show on the means of visits too, at 90 %. */
  | { readonly kind: 'visits'; readonly shotsAVisit: number };

/** Two contenders hit in so many complete rounds are judged by these. */
export const fewestRoundsJudged = 8;

/** A test of k groups of n values each, all pairs compared at `level`. */
export interface Test {
  readonly n: number;
  readonly k: number;
  readonly level: number;
  /** Shots where not said. */
  readonly by?: JudgedBy;
}

/** Whether such a test is judged by the differences of its rounds. */
export function isPaired({ n, k, by }: Test): boolean {
  return by?.kind === 'rounds' && k === 2 && n >= by.pairedFrom;
}
