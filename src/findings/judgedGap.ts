import type { PairFindings, VerdictId } from './findings.ts';
import type { Gap } from './gap.ts';
import type { PairFacts, ShotsCounted } from './pairFacts.ts';
import { fewestErrorDf, fewestHittersAsUnit, fewestRoundsForCheck, narrowConfidence } from './thresholds.ts';
import { isGap, verdictOf } from './verdict.ts';

export function findGap(gaps: readonly Gap[], a: string, b: string): Gap | null {
  return gaps.find((gap) => gap.a === a && gap.b === b) ?? null;
}

/** The verdict of a gap, which in mini-blocks must also survive visits as the unit. */
export function judgedOf(gap: Gap, counted: ShotsCounted, facts: PairFacts): VerdictId {
  return survivesVisits(gap, counted, facts) ? verdictOf(gap.estimate, gap.ci, facts.matters) : 'too-close';
}

/**
 * Shots of one visit resemble each other, so that a gap in mini-blocks must also show when visits are the unit
 * (additive model on visit means, 90 %). Where the hitter is the unit they are averaged anyway.
 */
export function survivesVisits(
  gap: Gap,
  { session, byTurns }: ShotsCounted,
  { order, matters }: PairFacts,
): boolean {
  const inVisits = order.kind === 'mini-blocks' && session.hitters.length < fewestHittersAsUnit;
  if (!inVisits || !isGap(verdictOf(gap.estimate, gap.ci, matters))) return true;
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
  if (own.turns.complete < fewestRoundsForCheck) return null;
  const found = counted.byTurns()(gap, level);
  if (found === null || found.df < fewestErrorDf) return null;
  return { estimate: found.estimate, ci: [found.ci[0], found.ci[1]] };
}
