import { leaveOneOut, leaveOneOutRange } from '../stats/leaveOneOut.ts';
import type { Interval } from './findings.ts';
import type { Gap } from './gap.ts';
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
  const fewest = Math.min(groups[a]?.length ?? 0, groups[b]?.length ?? 0);
  const couldDecide = isGap(verdictOf(gap.estimate, gap.ci, matters)) && fewest >= fewestForOneShot;
  return {
    range: leaveOneOutRange(groups, a, b),
    restsOnOneShot: couldDecide && oneShotDecides(groups, a, b, level),
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
