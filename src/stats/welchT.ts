import { familyInterval } from './familyInterval.ts';
import type { EstimatedGap, GapInterval } from './gapInterval.ts';
import type { Moments } from './moments.ts';
import { requireAtLeast, requireFraction, StatisticsError } from './statisticsError.ts';

/**
 * Gap of two independent groups without assuming equal spread: Welch's t with Satterthwaite's degrees of freedom
 * (Welch 1938, Biometrika 29; Satterthwaite 1946). Assumes independent values, means near normal.
 *
 * @returns `a` minus `b`, two-sided p, interval at `level`
 * @throws StatisticsError `sample-too-small` under two values, `no-spread` when neither group varies
 */
export function welchT(a: Moments, b: Moments, level: number): GapInterval {
  requireFraction('welchT', 'level', level);
  return familyInterval(welchGap('welchT', a, b), level, 2);
}

/** Estimate a - b, its standard error and Satterthwaite's df; `statistic` names the caller in errors. */
export function welchGap(statistic: string, a: Moments, b: Moments): EstimatedGap {
  requireAtLeast(statistic, 'values a group', Math.min(a.n, b.n), 2);
  const ofA = a.variance / a.n;
  const ofB = b.variance / b.n;
  const sum = ofA + ofB;
  if (!(sum > 0)) throw new StatisticsError('no-spread', statistic, 'neither group varies');
  // shares rather than squares of variances: nothing under- or overflows
  const shareA = ofA / sum;
  const shareB = ofB / sum;
  return {
    estimate: a.mean - b.mean,
    standardError: Math.sqrt(sum),
    df: 1 / ((shareA * shareA) / (a.n - 1) + (shareB * shareB) / (b.n - 1)),
  };
}
