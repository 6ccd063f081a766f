import { at } from '../stats/at.ts';
import { pairsOf } from '../stats/gapInterval.ts';
import { once } from '../stats/onceEach.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { canonicalUnit } from '../trade/units.ts';
import type { Session } from '../intake/session.ts';
import { flightModelHeading } from '../intake/modelledColumns.ts';
import type { ShotColumn } from '../intake/shots/shotFile.ts';
import type { AnalysisInput } from './analysisInput.ts';
import { contenderSummary } from './contenderSummary.ts';
import { driftsOf, sequencesOf } from './drift.ts';
import type { MetricFindings } from './findings.ts';
import { gapsOf, unitOf } from './gapsOf.ts';
import { hitterGaps, type HitterSamples } from './hitterFindings.ts';
import type { HitOrder } from './hitOrder.ts';
import { holdsFor } from './holds.ts';
import { judgedGolfers } from './judgedGolfers.ts';
import { leadingGroup } from './leadingGroup.ts';
import { isUnusual } from './mattersCheck.ts';
import type { PairFacts, ShotsCounted } from './pairFacts.ts';
import { pairFindings } from './pairFindings.ts';
import { reachOf } from './reach.ts';
import { samplesOf } from './samples.ts';
import { spreadOf } from './spread.ts';
import { confidence } from './thresholds.ts';
import { whatJudges } from './whatJudges.ts';
import { trendsOf } from './trends.ts';
import { turnGaps } from './turnGap.ts';
import { withoutDrift } from './withoutDrift.ts';

/**
 * One metric judged: summaries, the test of all contenders at once, every pair, and what the test could see.
 * Primary metrics share the 5 % between them; exploratory ones are judged at 95 % each.
 */
export function metricFindings(input: AnalysisInput, column: ShotColumn, order: HitOrder): MetricFindings {
  const id = column.metric;
  const { session } = input;
  const primary = input.primaries.includes(id);
  const level = primary ? 1 - (1 - confidence) / input.primaries.length : confidence;
  const matters = input.matters[id] ?? metrics[id].matters;
  const better = input.better[id] ?? metrics[id].better;
  const samples = samplesOf(session, id);
  const golfers = judgedGolfers(session);
  const byHitter = samplesByHitter(session, id);
  const own = { session, metric: id, samples, order };
  const { gaps, omnibus, cellsLeftOut } = gapsOf({ ...own, byHitter, level, step: column.step });
  const judgedBy = whatJudges(order, gaps[0]?.method === 'paired-rounds', samples);
  const reach =
    byHitter.length === 1 ? reachOf(samples, { level, step: column.step, matters, by: judgedBy }) : null;
  const free = withoutDrift(own);
  const facts: PairFacts = {
    input,
    column,
    order,
    primary,
    level,
    matters,
    better,
    counted: {
      session,
      samples,
      byHitter,
      gaps,
      hitterGaps: hitterGaps(byHitter, level, column.step),
      byTurns: once(() => turnGaps(own)),
    },
    withLeftOut: leftOutCounted(input.session, column, {
      order,
      level,
      mayPair: gaps[0]?.method === 'paired-rounds',
    }),
    drifts: order.rowsInHitOrder ? driftsOf(session, id, golfers.judged) : [],
    sequences: sequencesOf(session, golfers.judged),
    golfersAreUnit: unitOf(session) === 'hitter',
    withoutDrift: free,
    powerAtMatters: reach?.powerAtMatters ?? null,
    holds: holdsFor({ ...own, step: column.step, matters, withoutDrift: free }),
  };
  const byContender = samples.map((sample) => contenderSummary(sample, byHitter.length === 1));
  const pairs = pairsOf(samples.length).map(([a, b]) =>
    pairFindings(at(samples, a).contender, at(samples, b).contender, facts),
  );
  return {
    id,
    unit: canonicalUnit[metrics[id].dimension],
    class: column.class,
    looksEstimated: column.looksEstimated === true,
    readBy: column.heading === flightModelHeading ? 'flight-model' : 'monitor',
    resolution: column.step,
    role: primary ? 'primary' : 'exploratory',
    better,
    matters,
    mattersFrom: mattersFrom(input, id),
    mattersUnusual: isUnusual(matters, metrics[id].matters),
    byContender,
    omnibus,
    cellsLeftOut,
    golfersLeftOut: golfers.leftOut,
    judgedTogether: gaps.length,
    pairs,
    drift: driftOf(facts.drifts),
    trends: trendsOf(session, id, order),
    spread: byHitter.length === 1 ? spreadOf(samples) : null,
    detectable: reach?.detectable ?? null,
    luck: reach?.luck ?? null,
    shotsNeeded: reach?.shotsNeeded ?? null,
    shotsToShowLevel: reach?.shotsToShowLevel ?? null,
    leading: leadingGroup(pairs, better),
  };
}

function mattersFrom(
  { matters, mattersOfShop }: AnalysisInput,
  metric: MetricId,
): MetricFindings['mattersFrom'] {
  if (matters[metric] === undefined) return 'trade';
  return mattersOfShop.includes(metric) ? 'shop' : 'report';
}

function driftOf(drifts: PairFacts['drifts']): MetricFindings['drift'] {
  const [only] = drifts;
  return drifts.length !== 1 || only === undefined ? null : { slope: only.slope, ci: only.ci };
}

function leftOutCounted(
  { shots, ...rest }: Session,
  { metric, step }: ShotColumn,
  judging: { readonly order: HitOrder; readonly level: number; readonly mayPair: boolean },
): ShotsCounted | null {
  if (shots.every(({ excluded }) => excluded === null)) return null;
  const session: Session = { ...rest, shots: shots.map((shot) => ({ ...shot, excluded: null })) };
  const samples = samplesOf(session, metric);
  const byHitter = samplesByHitter(session, metric);
  const { gaps } = gapsOf({ session, metric, samples, byHitter, step, ...judging });
  return {
    session,
    samples,
    byHitter,
    gaps,
    hitterGaps: hitterGaps(byHitter, judging.level, step),
    byTurns: once(() => turnGaps({ session, metric, samples, order: judging.order })),
  };
}

function samplesByHitter(session: Session, metric: MetricId): readonly HitterSamples[] {
  return judgedGolfers(session).judged.map((hitter) => ({
    hitter,
    samples: samplesOf(session, metric, { hitter }),
  }));
}
