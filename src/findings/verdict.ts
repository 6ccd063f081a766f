import type { Interval, VerdictId } from './findings.ts';

export type { VerdictId };

/**
 * The verdict of a gap. Comparisons are strict and on unrounded values in one unit.
 *
 * @param estimate the gap, `a` minus `b`
 * @param ci its simultaneous interval
 * @param matters the smallest gap that matters, above 0
 */
export function verdictOf(estimate: number, [lower, upper]: Interval, matters: number): VerdictId {
  const excludesZero = lower > 0 || upper < 0;
  const inside = -matters < lower && upper < matters;
  if (!excludesZero) return inside ? 'level' : 'too-close';
  if (lower > matters || upper < -matters) return 'clear';
  if (inside) return 'small';
  return Math.abs(estimate) >= matters ? 'size-unsure' : 'maybe-small';
}

/** Whether a verdict says that there is a gap. */
export function isGap(verdict: VerdictId): boolean {
  return verdict === 'clear' || verdict === 'size-unsure' || verdict === 'maybe-small' || verdict === 'small';
}
