import { at } from '../stats/at.ts';
import { greatestOf, leastOf } from '../stats/extremes.ts';
import { leaveOneOut, leaveOneOutRange } from '../stats/leaveOneOut.ts';
import { median, medianAbsoluteDeviation } from '../stats/quantile.ts';
import type { Interval } from './findings.ts';
import type { Gap } from './gap.ts';
import { gapOfRounds } from './pairedRounds.ts';
import type { Sample } from './samples.ts';
import { farOut, fewestForOneShot, fewestShotsJudged } from './thresholds.ts';
import { isGap, verdictOf } from './verdict.ts';

/** The gap of a pair with any one shot left out. */
export interface LeaveOut {
  /** Smallest and largest estimate, `a` minus `b`, SI. */
  readonly range: Interval;
  /** Whether one shot far from the others decides: without it the interval includes 0. */
  readonly restsOnOneShot: boolean;
}

/** Null where a contender would have too little left. One hitter only. */
export function leaveOut(
  gap: Gap,
  samples: readonly Sample[],
  level: number,
  matters: number,
): LeaveOut | null {
  const judged = samples.filter(({ values }) => values.length >= fewestShotsJudged);
  const a = judged.findIndex(({ contender }) => contender === gap.a);
  const b = judged.findIndex(({ contender }) => contender === gap.b);
  const spreadless = judged.some(({ values }) => new Set(values).size < 3);
  if (a < 0 || b < 0 || spreadless) return null;
  const groups = judged.map(({ values }) => values);
  const fewest = Math.min(at(groups, a).length, at(groups, b).length);
  const couldDecide = isGap(verdictOf(gap.estimate, gap.ci, matters)) && fewest >= fewestForOneShot;
  return {
    range: leaveOneOutRange(groups, a, b),
    restsOnOneShot: couldDecide && oneShotDecides(groups, a, b, level),
  };
}

/** The same for a gap judged by paired rounds: a shot left out takes its round with it. */
export function leaveOutOfRounds(
  gap: Gap,
  differences: readonly number[],
  matters: number,
  step: number,
): LeaveOut {
  const { a, b, level, estimate } = gap;
  const n = differences.length;
  const estimates = differences.map((own) => (n * estimate - own) / (n - 1));
  const middle = median(differences);
  const mad = medianAbsoluteDeviation(differences);
  const isFarOut = (own: number): boolean => mad > 0 && (0.6745 * Math.abs(own - middle)) / mad > farOut;
  const decides = (index: number): boolean => {
    const without = gapOfRounds([a, b], differences.toSpliced(index, 1), level, step);
    return without !== null && without.ci[0] <= 0 && without.ci[1] >= 0;
  };
  return {
    range: [leastOf(estimates), greatestOf(estimates)],
    restsOnOneShot:
      isGap(verdictOf(estimate, gap.ci, matters)) &&
      differences.some((own, index) => isFarOut(own) && decides(index)),
  };
}

function oneShotDecides(
  groups: readonly (readonly number[])[],
  a: number,
  b: number,
  level: number,
): boolean {
  return leaveOneOut(groups, a, b, level).some((without) => {
    if (without.farOut <= farOut) return false;
    const { ci } = without.gap();
    return ci[0] <= 0 && ci[1] >= 0;
  });
}
