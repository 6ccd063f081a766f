import { metrics } from '../trade/metrics.ts';
import { aheadBy, statusOf } from './answerStatus.ts';
import { creditOf } from './credit.ts';
import { deviceReach } from './device.ts';
import type { PairFindings, VerdictId } from './findings.ts';
import type { Gap } from './gap.ts';
import { hittersApart, newHitterRange, whoGained } from './hitterFindings.ts';
import {
  findGap,
  gapByRounds,
  isOfEachGolfer,
  judgedOf,
  leftOutCounted,
  survivesVisits,
} from './judgedGap.ts';
import { leaveOut, leaveOutOfRounds, type LeaveOut } from './leaveOut.ts';
import { leverOf } from './lever.ts';
import { isUnusual } from './mattersCheck.ts';
import { whyNotJudged } from './notJudged.ts';
import { pairOverlays } from './overlays.ts';
import type { PairFacts } from './pairFacts.ts';
import { roundDifferences } from './pairedRounds.ts';
import type { Sample } from './samples.ts';
import { singleShot } from './singleShot.ts';
import { firstLookShots } from './thresholds.ts';
import { isUnevenlyRead } from './unevenReadings.ts';
import { isGap } from './verdict.ts';

/** One pair judged: gap, verdict, credit, the answer as printed, how it holds, and what has to be said with it. */
export function pairFindings(a: string, b: string, facts: PairFacts): PairFindings {
  const { input, column, level, matters, counted } = facts;
  const { samples, byHitter } = counted;
  const gap = findGap(counted.gaps, a, b);
  const { credit, because } = creditOf({ ...facts, a, b, gap });
  const visitsAlike = gap !== null && !survivesVisits(gap, counted, facts);
  const verdict = gap === null ? 'not-judged' : judgedOf(gap, counted, facts);
  const checked = facts.primary && gap !== null && !visitsAlike;
  const holds = checked ? facts.holds(gap, credit === 'contender') : [];
  const without = checked && byHitter.length === 1 ? withoutOneShot(gap, facts) : null;
  const withLeftOut = leftOutCounted(facts, a, b);
  const device =
    gap === null ? null : deviceReach(gap, column, input.accuracy[column.metric] ?? null, matters);
  const own = byHitter.length > 1 ? counted.hitterGaps(a, b) : [];
  const counts = [countOf(samples, a), countOf(samples, b)] as const;
  const overlays = pairOverlays({
    hitters: byHitter.length,
    primary: facts.primary,
    column,
    verdict,
    counts,
    openBecause: because,
    visitsAlike,
    golfersApart: gap !== null && !isOfEachGolfer(gap, counted, facts),
    holds,
    restsOnOneShot: without?.restsOnOneShot ?? false,
    dependsOnLeftOut: withLeftOut !== null && isAnother(withLeftOut, verdict, gap?.estimate ?? 0),
    unevenlyRead: isUnevenlyRead(counted.session, column.metric, a, b),
    nearDevice: device?.near ?? false,
    mattersUnusual: isUnusual(matters, metrics[column.metric].matters),
    powerAtMatters: facts.powerAtMatters,
  });
  const side = gap === null ? null : aheadBy(gap.estimate, facts.better);
  const [ahead, behind] = side === 'b' ? [b, a] : [a, b];
  const lever = leverOf(facts.sequences, a, b) ?? 0;
  return {
    a,
    b,
    estimate: gap?.estimate ?? null,
    ci: gap?.ci ?? null,
    level,
    p: gap?.p ?? null,
    method: gap?.method ?? null,
    verdict,
    credit,
    status: statusOf({ verdict, credit, leans: overlays.includes('leans') }),
    ahead: side === null ? null : ahead,
    firstLook: Math.min(...counts) < firstLookShots,
    openBecause: because,
    hitLater: because === 'lever' ? (lever > 0 ? a : b) : null,
    notJudged: gap === null ? whyNotJudged(a, b, byHitter) : null,
    overlays,
    holds,
    singleShot: side === null || credit === 'open' ? null : singleShot(ahead, behind, byHitter, facts.better),
    driftNeeded:
      gap === null ? null : driftNeeded(gap, { ...facts, open: credit === 'open', verdict, lever }),
    byRounds: gap === null ? null : gapByRounds(gap, facts),
    leaveOneOut: without?.range ?? null,
    withLeftOut,
    device,
    atEqualSpeed: null,
    byHitter: own,
    hittersDiffer: hittersApart(a, b, byHitter, column.step),
    whoGained: whoGained(own),
    newHitter: newHitterRange(own),
  };
}

/** The gap with any one shot left out, judged as the gap itself is. */
function withoutOneShot(gap: Gap, { counted, column, order, level, matters }: PairFacts): LeaveOut | null {
  const { session, samples } = counted;
  const differences = gap.method === 'paired-rounds' ? roundDifferences(session, column.metric, order) : null;
  return differences === null
    ? leaveOut(gap, samples, level, matters)
    : leaveOutOfRounds(gap, differences, matters, column.step);
}

function countOf(samples: readonly Sample[], id: string): number {
  return samples.find(({ contender }) => contender === id)?.values.length ?? 0;
}

/** Whether an answer is another one: another verdict, or a gap the other way. */
function isAnother(
  { verdict, estimate }: NonNullable<PairFindings['withLeftOut']>,
  without: VerdictId,
  gap: number,
): boolean {
  return verdict !== without || (isGap(verdict) && Math.sign(estimate) !== Math.sign(gap));
}

/** The steady drift, first to last shot, that alone would make a gap whose cause is open. */
function driftNeeded(
  gap: Gap,
  facts: Pick<PairFacts, 'order'> & {
    readonly open: boolean;
    readonly verdict: VerdictId;
    readonly lever: number;
  },
): number | null {
  const { order, open, verdict, lever } = facts;
  if (!open || !isGap(verdict) || !order.rowsInHitOrder || lever === 0) return null;
  return gap.estimate / lever;
}
