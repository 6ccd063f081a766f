import type { ProblemKind } from '../problems/kinds.ts';

/** A word that a narrative should do without, and why. */
export interface CarefulWord {
  readonly kind: ProblemKind;
  readonly pattern: RegExp;
  readonly expected: string;
  readonly cure: string;
  /** Passes in a sentence that denies it: "we do not say that it will last longer". */
  readonly mayBeDenied: boolean;
  /**
   * Beside what it counts: "always" is no fault in "we always use one mat", nor "won" in "he won a cup last year".
   */
  readonly counts: 'anywhere' | 'of shots' | 'of what is compared';
}
