import { leaveOneOut } from '../stats/leaveOneOut.ts';
import type { Interval } from './findings.ts';
import type { Gap } from './gap.ts';
import type { Sample } from './samples.ts';
import { fewestShotsJudged } from './shotGaps.ts';
import { isGap, verdictOf } from './verdict.ts';

/** The gap of a pair with any one shot left out. */
export interface LeaveOut {
  /** Smallest and largest estimate, `a` minus `b`, SI. */
  readonly range: Interval;
  /** Whether one shot far from the others decides: without it the interval includes 0. */
  readonly restsOnOneShot: boolean;
}

const fewestForOneShot = 8;
/** Modified z score beyond which a shot is far out (Iglewicz & Hoaglin 1993). */
const farOut = 3.5;

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
  const without = leaveOneOut(
    judged.map(({ values }) => values),
    a,
    b,
    level,
  );
  const estimates = without.map(({ gap: { estimate } }) => estimate);
  const fewest = Math.min(judged[a]?.values.length ?? 0, judged[b]?.values.length ?? 0);
  const decides = without.some(
    ({ gap: { ci }, farOut: distance }) => ci[0] <= 0 && ci[1] >= 0 && distance > farOut,
  );
  return {
    range: [Math.min(...estimates), Math.max(...estimates)],
    restsOnOneShot: isGap(verdictOf(gap.estimate, gap.ci, matters)) && fewest >= fewestForOneShot && decides,
  };
}
