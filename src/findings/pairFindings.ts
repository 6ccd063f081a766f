import type { ShotColumn } from '../intake/shots/shotFile.ts';
import type { AnalysisInput } from './analysisInput.ts';
import { creditOf } from './credit.ts';
import { deviceReach } from './device.ts';
import type { Drift } from './drift.ts';
import type { PairFindings } from './findings.ts';
import type { Gap } from './gap.ts';
import { hitterGaps, newHitterRange, whoGained, type HitterSamples } from './hitterFindings.ts';
import type { HitOrder } from './hitOrder.ts';
import { byRounds, holdsOf } from './holds.ts';
import { leaveOut } from './leaveOut.ts';
import { pairOverlays } from './overlays.ts';
import type { Sample } from './samples.ts';
import { isGap, verdictOf, type VerdictId } from './verdict.ts';

/** What all pairs of a metric share. */
export interface PairFacts {
  readonly input: AnalysisInput;
  readonly column: ShotColumn;
  readonly order: HitOrder;
  readonly primary: boolean;
  readonly level: number;
  /** SI. */
  readonly matters: number;
  readonly samples: readonly Sample[];
  readonly byHitter: readonly HitterSamples[];
  readonly gaps: readonly Gap[];
  /** The gaps with the left-out shots counted; null where none was left out. */
  readonly gapsWithLeftOut: readonly Gap[] | null;
  readonly drifts: readonly Drift[];
  readonly sequences: readonly (readonly string[])[];
  /** Chance to find a true gap of what matters; null where it cannot be said. */
  readonly powerAtMatters: number | null;
}

/** One pair judged: gap, verdict, credit, how it holds, and what has to be said with it. */
export function pairFindings(a: string, b: string, facts: PairFacts): PairFindings {
  const { input, column, order, level, matters, samples, byHitter } = facts;
  const gap = findGap(facts.gaps, a, b);
  const { credit, because } = creditOf({
    a,
    b,
    matters,
    order,
    drifts: facts.drifts,
    sequences: facts.sequences,
  });
  const visitsAlike = gap !== null && !survivesVisits(gap, facts);
  const verdict =
    gap === null ? 'not-judged' : visitsAlike ? 'too-close' : verdictOf(gap.estimate, gap.ci, matters);
  const checked = facts.primary && gap !== null && !visitsAlike;
  const oneHitter = byHitter.length === 1;
  const holds = checked
    ? holdsOf(gap, credit === 'contender', {
        session: input.session,
        metric: column.metric,
        samples,
        order,
        step: column.step,
        matters,
      })
    : [];
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
      verdictWithLeftOut: withLeftOut?.verdict ?? null,
      nearDevice: device?.near ?? false,
      powerAtMatters: facts.powerAtMatters,
    }),
    holds,
    leaveOneOut: without?.range ?? null,
    withLeftOut,
    device,
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

/**
 * Shots of one visit resemble each other, so that a gap in mini-blocks must also show when visits are the unit
 * (additive model on visit means, 90 %). Where there are too few visits for that, credit is open anyway.
 */
function survivesVisits(gap: Gap, { input, column, order, samples, matters }: PairFacts): boolean {
  if (order.turns?.kind !== 'visits' || !isGap(verdictOf(gap.estimate, gap.ci, matters))) return true;
  const { session } = input;
  const way = byRounds(
    gap,
    { session, metric: column.metric, samples, order, step: column.step, matters },
    3,
  );
  const counted = way === null ? null : way(0.9);
  if (counted === null) return true;
  return gap.estimate > 0 ? counted.ci[0] > 0 : counted.ci[1] < 0;
}

function leftOutCounted(
  { gapsWithLeftOut, matters }: PairFacts,
  a: string,
  b: string,
): { readonly estimate: number; readonly ci: readonly [number, number]; readonly verdict: VerdictId } | null {
  const gap = gapsWithLeftOut === null ? null : findGap(gapsWithLeftOut, a, b);
  if (gap === null) return null;
  return { estimate: gap.estimate, ci: gap.ci, verdict: verdictOf(gap.estimate, gap.ci, matters) };
}
