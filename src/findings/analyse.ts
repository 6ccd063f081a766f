import type { Problem } from '../problems/problem.ts';
import { problemMessage } from '../problems/problemMessage.ts';
import { metricIds, type MetricId } from '../trade/metrics.ts';
import type { AnalysisInput } from './analysisInput.ts';
import { claimStandings, isRuleFirst } from './claims.ts';
import { fairnessChecks } from './fairness.ts';
import { atEqualSpeed } from './equalSpeed.ts';
import type { Findings, MetricFindings, OverlayId, SwingFindings } from './findings.ts';
import { unitOf } from './gapsOf.ts';
import { golfersOf } from './golfers.ts';
import { hitOrder, type HitOrder } from './hitOrder.ts';
import { landingOf } from './landing.ts';
import { launchWindowOf } from './launchWindow.ts';
import { metricFindings } from './metricFindings.ts';
import { straighterPairs } from './straighter.ts';
import { differentMeasures, swingOf } from './swing.ts';
import { confidence } from './thresholds.ts';
import { isGap } from './verdict.ts';
import { yardsOf } from './yards.ts';

/**
 * All findings of a report. Primary metrics come first, in the order of the plan, then what else the files hold.
 *
 * @param problems what intake found; errors never come this far
 */
export function analyse(input: AnalysisInput, problems: readonly Problem[]): Findings {
  const { session } = input;
  const order = hitOrder(session, input.statedOrder, input.orderReproduced);
  const swing = swingOf(input);
  const metrics = metricOrder(input).flatMap((id) => {
    const column = session.columns[id];
    return column === undefined ? [] : [withSwing(metricFindings(input, column, order), swing, input, order)];
  });
  const straighter = straighterPairs(input, order);
  return {
    version: 2,
    slug: input.slug,
    title: input.title,
    date: input.date,
    units: 'SI',
    contenders: input.contenders.map(({ id, label }) => {
      const own = session.shots.filter(({ contender }) => contender === id);
      return {
        id,
        label,
        shots: own.length,
        excluded: own.filter(({ excluded }) => excluded !== null).length,
      };
    }),
    design: {
      hitters: session.hitters.length,
      ...golfersOf(session),
      order: order.kind,
      rounds: order.rounds,
      sequence: order.sequence,
      unit: unitOf(session),
      plan: input.plan,
      plannedInAdvance: isOnRecord(input.plan),
    },
    metrics,
    straighter,
    explored: exploredIn(metrics, straighter),
    swing,
    yards: yardsOf(
      input,
      metrics.find(({ id }) => id === 'carry'),
    ),
    landing: landingOf(session),
    launchWindow: launchWindowOf(session),
    claims: claimStandings(
      input.claims,
      { metrics, straighter },
      isRuleFirst(isOnRecord(input.plan), input.written.plan),
    ),
    fairness: fairnessChecks({ written: input.written, plan: input.plan, session, metrics, order, problems }),
    caveats: caveatsOf(metrics),
    problems: problems.map((problem) => ({
      kind: problem.kind,
      severity: problem.severity,
      file: problem.file,
      line: problem.line,
      column: problem.column,
      message: problemMessage(problem),
    })),
    seed: input.seed,
  };
}

/** A primary metric with what the swing has to do with its gaps. */
function withSwing(
  metric: MetricFindings,
  swing: SwingFindings | null,
  { session }: AnalysisInput,
  order: HitOrder,
): MetricFindings {
  const [first] = metric.pairs;
  if (metric.role !== 'primary' || swing === null || first === undefined) return metric;
  const { id, resolution: step } = metric;
  const equalled = atEqualSpeed(session, { id, level: first.level, step }, order, swing);
  return {
    ...metric,
    pairs: metric.pairs.map((pair) => {
      const mixed = isGap(pair.verdict) && differentMeasures(swing, pair.a, pair.b).length > 0;
      return {
        ...pair,
        atEqualSpeed: pair.verdict === 'not-judged' ? null : equalled(pair),
        overlays: mixed ? [...pair.overlays, 'mixed-with-swing'] : pair.overlays,
      };
    }),
  };
}

function metricOrder({ primaries }: AnalysisInput): readonly MetricId[] {
  return [...primaries, ...metricIds.filter((id) => !primaries.includes(id))];
}

/** How many measures were judged besides the primary ones, and how many of those show a gap by chance alone. */
function exploredIn(
  metrics: readonly MetricFindings[],
  straighter: Findings['straighter'],
): Findings['explored'] {
  const families = [
    ...metrics.filter(({ role }) => role === 'exploratory').map(({ pairs }) => pairs),
    straighter ?? [],
  ];
  const looked = families.filter((pairs) => pairs.some(({ verdict }) => verdict !== 'not-judged')).length;
  return { looked, byChance: (1 - confidence) * looked };
}

/** Overlays of any primary pair, each once. */
function caveatsOf(metrics: readonly MetricFindings[]): readonly OverlayId[] {
  const primaries = metrics.filter(({ role }) => role === 'primary');
  return [...new Set(primaries.flatMap(({ pairs }) => pairs.flatMap(({ overlays }) => overlays)))];
}

/** Whether a plan was seen by the record before the first shot. */
const isOnRecord = (plan: AnalysisInput['plan']): boolean =>
  plan === 'on-record' || plan === 'on-record-that-day';
