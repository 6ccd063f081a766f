import { aheadBy, statusOf } from '../../src/findings/answerStatus.ts';
import type { PairFindings } from '../../src/findings/findings.ts';

/** A pair whose verdict and gap are as told, credited to the contender unless told otherwise; the rest is empty. */
export function plainPair(
  a: string,
  b: string,
  estimate: number | null,
  verdict: PairFindings['verdict'],
  rest: Partial<PairFindings> = {},
): PairFindings {
  const { credit = 'contender', overlays = [] } = rest;
  const side = estimate === null ? null : aheadBy(estimate, 'more');
  return {
    a,
    b,
    estimate,
    ci: estimate === null ? null : [estimate - 1, estimate + 1],
    level: 0.95,
    p: null,
    method: null,
    verdict,
    credit,
    status: statusOf({ verdict, credit, leans: overlays.includes('leans') }),
    ahead: side === null ? null : side === 'a' ? a : b,
    firstLook: false,
    openBecause: credit === 'open' ? 'one-after-another' : null,
    hitLater: null,
    notJudged: estimate === null ? { because: 'too-few-shots', contenders: [b], fewest: 4 } : null,
    overlays,
    holds: [],
    singleShot: null,
    driftNeeded: null,
    byRounds: null,
    leaveOneOut: null,
    withLeftOut: null,
    device: null,
    atEqualSpeed: null,
    byHitter: [],
    hittersDiffer: [],
    whoGained: null,
    newHitter: null,
    ...rest,
  };
}
