import type { ShotColumn } from '../intake/shots/shotFile.ts';
import type { Session } from '../intake/session.ts';
import type { AnalysisInput } from './analysisInput.ts';
import { creditOf } from './credit.ts';
import { deviceReach } from './device.ts';
import type { Drift } from './drift.ts';
import type { Hold, PairFindings } from './findings.ts';
import type { Gap } from './gap.ts';
import { hitterGaps, newHitterRange, whoGained, type HitterSamples } from './hitterFindings.ts';
import type { HitOrder } from './hitOrder.ts';
import { leaveOut } from './leaveOut.ts';
import { pairOverlays } from './overlays.ts';
import { fewestHittersAsUnit } from './hitterModelGaps.ts';
import type { Sample } from './samples.ts';
import type { TurnGaps } from './turnGap.ts';
import { isGap, verdictOf, type VerdictId } from './verdict.ts';

/** The shots that count, and the gaps they make. */
export interface ShotsCounted {
  readonly session: Session;
  readonly samples: readonly Sample[];
  readonly gaps: readonly Gap[];
  /** The same with visits as the unit. */
  readonly byTurns: () => TurnGaps;
}

/** What all pairs of a metric share. */
export interface PairFacts {
  readonly input: AnalysisInput;
  readonly column: ShotColumn;
  readonly order: HitOrder;
  readonly primary: boolean;
  readonly level: number;
  /** SI. */
  readonly matters: number;
  readonly counted: ShotsCounted;
  readonly byHitter: readonly HitterSamples[];
  /** The same with the left-out shots counted; null where none was left out. */
  readonly withLeftOut: ShotsCounted | null;
  readonly drifts: readonly Drift[];
  readonly sequences: readonly (readonly string[])[];
  /** Chance to find a true gap of what matters; null where it cannot be said. */
  readonly powerAtMatters: number | null;
  /** How a gap holds in other ways. */
  readonly holds: (gap: Gap, credited: boolean) => readonly Hold[];
}

/** One pair judged: gap, verdict, credit, how it holds, and what has to be said with it. */
export function pairFindings(a: string, b: string, facts: PairFacts): PairFindings {
  const { input, column, order, level, matters, counted, byHitter } = facts;
  const { samples } = counted;
  const gap = findGap(counted.gaps, a, b);
  const { credit, because } = creditOf({
    a,
    b,
    matters,
    order,
    drifts: facts.drifts,
    sequences: facts.sequences,
  });
  const visitsAlike = gap !== null && !survivesVisits(gap, counted, facts);
  const verdict = gap === null ? 'not-judged' : judgedOf(gap, counted, facts);
  const checked = facts.primary && gap !== null && !visitsAlike;
  const oneHitter = byHitter.length === 1;
  const holds = checked ? facts.holds(gap, credit === 'contender') : [];
  const without = checked && oneHitter ? leaveOut(gap, samples, level, matters) : null;
  const withLeftOut = leftOutCounted(facts, a, b);
  const device =
    gap === null ? null : deviceReach(gap, column, input.accuracy[column.metric] ?? null, matters);
  const own = byHitter.length > 1 ? hitterGaps(a, b, byHitter, level, column.step) : [];
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
    overlays: pairOverlays({
      hitters: byHitter.length,
      primary: facts.primary,
      column,
      verdict,
      counts: [countOf(samples, a), countOf(samples, b)],
      openBecause: because,
      visitsAlike,
      holds,
      restsOnOneShot: without?.restsOnOneShot ?? false,
      dependsOnLeftOut: withLeftOut !== null && isAnother(withLeftOut, verdict, gap?.estimate ?? 0),
      nearDevice: device?.near ?? false,
      powerAtMatters: facts.powerAtMatters,
    }),
    holds,
    leaveOneOut: without?.range ?? null,
    withLeftOut,
    device,
    atEqualSpeed: null,
    byHitter: own,
    whoGained: whoGained(own),
    newHitter: newHitterRange(own),
  };
}

function findGap(gaps: readonly Gap[], a: string, b: string): Gap | null {
  return gaps.find((gap) => gap.a === a && gap.b === b) ?? null;
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

/** The verdict of a gap, which in mini-blocks must also survive visits as the unit. */
function judgedOf(gap: Gap, counted: ShotsCounted, facts: PairFacts): VerdictId {
  return survivesVisits(gap, counted, facts) ? verdictOf(gap.estimate, gap.ci, facts.matters) : 'too-close';
}

/**
 * Shots of one visit resemble each other, so that a gap in mini-blocks must also show when visits are the unit
 * (additive model on visit means, 90 %). Where the hitter is the unit they are averaged anyway.
 */
function survivesVisits(
  gap: Gap,
  { session, byTurns }: ShotsCounted,
  { order, matters }: PairFacts,
): boolean {
  const inVisits = order.kind === 'mini-blocks' && session.hitters.length < fewestHittersAsUnit;
  if (!inVisits || !isGap(verdictOf(gap.estimate, gap.ci, matters))) return true;
  const counted = byTurns()(gap, 0.9);
  if (counted === null) return false;
  return gap.estimate > 0 ? counted.ci[0] > 0 : counted.ci[1] < 0;
}

function leftOutCounted(facts: PairFacts, a: string, b: string): PairFindings['withLeftOut'] {
  const gap = facts.withLeftOut === null ? null : findGap(facts.withLeftOut.gaps, a, b);
  if (facts.withLeftOut === null || gap === null) return null;
  return { estimate: gap.estimate, ci: gap.ci, verdict: judgedOf(gap, facts.withLeftOut, facts) };
}
