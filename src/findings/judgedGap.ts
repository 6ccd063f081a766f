import type { PairFindings, VerdictId } from './findings.ts';
import type { Gap } from './gap.ts';
import { hittersApart } from './hitterFindings.ts';
import type { PairFacts, ShotsCounted } from './pairFacts.ts';
import { fewestErrorDf, fewestHittersAsUnit, fewestRoundsForCheck, narrowConfidence } from './thresholds.ts';
import { isGap, verdictOf } from './verdict.ts';
import { isInVisits } from './whatJudges.ts';

/** What a verdict needs besides the shots that count. */
type JudgingFacts = Pick<PairFacts, 'order' | 'golfersAreUnit' | 'level' | 'matters'> & {
  readonly column: Pick<PairFacts['column'], 'step'>;
};

export function findGap(gaps: readonly Gap[], a: string, b: string): Gap | null {
  return gaps.find((gap) => gap.a === a && gap.b === b) ?? null;
}

/**
 * The verdict of a gap. In mini-blocks it must also survive visits as the unit; and that nothing matters on average over
 * two to five golfers is said only where nothing matters to any of them.
 */
export function judgedOf(gap: Gap, counted: ShotsCounted, facts: JudgingFacts): VerdictId {
  if (!survivesVisits(gap, counted, facts)) return 'too-close';
  const verdict = verdictOf(gap.estimate, gap.ci, facts.matters);
  if (isOfEachGolfer(gap, counted, facts)) return verdict;
  return verdict === 'small' ? 'maybe-small' : 'too-close';
}

/**
 * Whether an answer that nothing matters is one of every golfer: each one's own interval lies within what matters, and no
 * two golfers differ. Always so for other answers, and where one golfer hit or golfers are the unit.
 */
export function isOfEachGolfer(
  gap: Gap,
  { byHitter, hitterGaps }: ShotsCounted,
  { column, matters }: JudgingFacts,
): boolean {
  const verdict = verdictOf(gap.estimate, gap.ci, matters);
  const few = byHitter.length > 1 && byHitter.length < fewestHittersAsUnit;
  if (!few || (verdict !== 'level' && verdict !== 'small')) return true;
  const { a, b } = gap;
  const each = hitterGaps(a, b).every(({ ci }) => ci !== null && -matters < ci[0] && ci[1] < matters);
  return each && hittersApart(a, b, byHitter, column.step).length === 0;
}

/**
 * Shots of one visit resemble each other, so that a gap in mini-blocks must also show when visits are the unit
 * (additive model on visit means, 90 %). Where the hitter is the unit they are averaged anyway.
 */
export function survivesVisits(
  gap: Gap,
  { byTurns }: ShotsCounted,
  { order, golfersAreUnit, matters }: JudgingFacts,
): boolean {
  if (!isInVisits(order) || golfersAreUnit) return true;
  if (!isGap(verdictOf(gap.estimate, gap.ci, matters))) return true;
  const counted = byTurns()(gap, narrowConfidence);
  if (counted === null) return false;
  return gap.estimate > 0 ? counted.ci[0] > 0 : counted.ci[1] < 0;
}

/** A gap with the left-out shots counted; null where none was left out. */
export function leftOutCounted(facts: PairFacts, a: string, b: string): PairFindings['withLeftOut'] {
  const gap = facts.withLeftOut === null ? null : findGap(facts.withLeftOut.gaps, a, b);
  if (facts.withLeftOut === null || gap === null) return null;
  return { estimate: gap.estimate, ci: gap.ci, verdict: judgedOf(gap, facts.withLeftOut, facts) };
}

/** A gap with complete rounds as the unit, at the level it is judged at; null without rounds enough. One golfer. */
export function gapByRounds(gap: Gap, { counted, order, level }: PairFacts): PairFindings['byRounds'] {
  const [own] = order.turns;
  if (counted.session.hitters.length !== 1 || own?.turns.kind !== 'rounds') return null;
  if (gap.method === 'paired-rounds') return null;
  if (own.turns.complete < fewestRoundsForCheck) return null;
  const found = counted.byTurns()(gap, level);
  if (found === null || found.df < fewestErrorDf) return null;
  return { estimate: found.estimate, ci: [found.ci[0], found.ci[1]] };
}
