import { creditOf } from '../../../src/findings/credit.ts';
import { driftsOf, sequencesOf } from '../../../src/findings/drift.ts';
import { gapsOf, unitOf } from '../../../src/findings/gapsOf.ts';
import { hittersApart } from '../../../src/findings/hitterFindings.ts';
import { hitterGaps } from '../../../src/findings/hitterFindings.ts';
import { hitOrder } from '../../../src/findings/hitOrder.ts';
import { judgedGolfers } from '../../../src/findings/judgedGolfers.ts';
import { findGap, judgedOf } from '../../../src/findings/judgedGap.ts';
import type { ShotsCounted } from '../../../src/findings/pairFacts.ts';
import { samplesOf } from '../../../src/findings/samples.ts';
import { turnGaps } from '../../../src/findings/turnGap.ts';
import { isGap, verdictOf, type VerdictId } from '../../../src/findings/verdict.ts';
import { withoutDrift } from '../../../src/findings/withoutDrift.ts';
import { pairsOf } from '../../../src/stats/gapInterval.ts';
import { once } from '../../../src/stats/onceEach.ts';
import type { Random } from '../../../src/stats/random.ts';
import { sessionOf, tenthYard, yd, type Swing } from '../../findings/sessions.ts';
import { CARRY_SD, MATTERS } from './shots.ts';

/** One golfer of an invented test; distances in yards, spreads of `CARRY_SD`. */
export interface Golfer {
  readonly order: readonly { readonly contender: string; readonly round?: number }[];
  /** By how much `a` is truly ahead of all others. */
  readonly gap: number;
  /** From first to last shot. */
  readonly drift?: number;
  /** Of neighbouring shots. */
  readonly correlation?: number;
  /** Standard deviation of what all shots share until another thing is taken up. */
  readonly ofSpell?: number;
}

export interface JudgedPair {
  readonly verdict: VerdictId;
  /** What would be said of the gap alone, of the mean over golfers or of shots whatever their visits. */
  readonly ofGapAlone: VerdictId;
  readonly credited: boolean;
  /** Whether any two golfers are told apart. */
  readonly golfersApart: boolean;
}

export const seen = ({ verdict }: JudgedPair): boolean => isGap(verdict);
export const wrong = (pair: JudgedPair): boolean => seen(pair) && pair.credited;

/**
 * The pairs of a test, judged by the very functions of a report: order, gaps, verdict, credit, golfers apart. What a
 * report works out besides, and what of it needs flights, is left out: that costs hundreds of times as much.
 */
export function judgedSession(
  contenders: readonly string[],
  golfers: readonly Golfer[],
  random: Random,
): readonly JudgedPair[] {
  const swings = golfers.flatMap((golfer, index) => hit(golfer, `g${index}`, random));
  const session = sessionOf(swings, { contenders, step: tenthYard });
  const [metric, level, step, matters] = ['carry', 0.95, tenthYard, yd(MATTERS)] as const;
  const order = hitOrder(session, null);
  const samples = samplesOf(session, metric);
  const { judged } = judgedGolfers(session);
  const byHitter = judged.map((hitter) => ({ hitter, samples: samplesOf(session, metric, { hitter }) }));
  const own = { session, metric, samples, order } as const;
  const { gaps } = gapsOf({ ...own, byHitter, level, step });
  const counted: ShotsCounted = {
    session,
    samples,
    byHitter,
    gaps,
    hitterGaps: hitterGaps(byHitter, level, step),
    byTurns: once(() => turnGaps(own)),
  };
  const golfersAreUnit = unitOf(session) === 'hitter';
  const facts = { order, golfersAreUnit, level, matters, column: { step } };
  const ofCredit = {
    ...facts,
    drifts: driftsOf(session, metric, judged),
    sequences: sequencesOf(session, judged),
    withoutDrift: withoutDrift(own),
  };
  return pairsOf(contenders.length).map(([first, second]) => {
    const [a = '', b = ''] = [contenders[first], contenders[second]];
    const gap = findGap(gaps, a, b);
    return {
      verdict: gap === null ? 'not-judged' : judgedOf(gap, counted, facts),
      ofGapAlone: gap === null ? 'not-judged' : verdictOf(gap.estimate, gap.ci, matters),
      credited: creditOf({ ...ofCredit, a, b, gap }).credit === 'contender',
      golfersApart: hittersApart(a, b, byHitter, step).length > 0,
    };
  });
}

function hit(golfer: Golfer, hitter: string, random: Random): readonly Swing[] {
  const { order, gap, drift = 0, correlation = 0, ofSpell = 0 } = golfer;
  let before = random.normal();
  let spell = 0;
  return order.map((place, index): Swing => {
    if (index > 0) before = correlation * before + Math.sqrt(1 - correlation ** 2) * random.normal();
    if (place.contender !== order[index - 1]?.contender) spell = ofSpell * random.normal();
    const mean = 220 + (place.contender === 'a' ? gap : 0) + (drift * index) / (order.length - 1);
    const carry = yd(Number((mean + CARRY_SD * before + spell).toFixed(1)));
    return { ...place, hitter, values: { carry } };
  });
}
