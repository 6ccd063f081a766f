import type { Session } from '../intake/session.ts';
import type { Problem } from '../problems/problem.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { AnalysisInput, WrittenConditions } from './analysisInput.ts';
import { buildDifferences } from './buildDifferences.ts';
import { fairnessWhy } from './fairnessWhy.ts';
import type { FairnessCheck, FairnessId, MetricFindings, OverlayId, PlanStanding } from './findings.ts';
import type { HitOrder } from './hitOrder.ts';
import { judgedGolfers } from './judgedGolfers.ts';
import { fewestHittersAsUnit } from './thresholds.ts';

interface FairnessFacts extends Pick<AnalysisInput, 'written' | 'plan' | 'session'> {
  readonly metrics: readonly MetricFindings[];
  readonly order: HitOrder;
  readonly problems: readonly Problem[];
}

type State = FairnessCheck['state'];

/** How fair the test was, one thing after another; no score is made of it. Where balls are compared none is held. */
export function fairnessChecks(facts: FairnessFacts): readonly FairnessCheck[] {
  const states: Readonly<Record<FairnessId, State | null>> = {
    'one-thing-varied': oneThingVaried(facts),
    order: fairOrder(facts),
    'warm-up': warmUp(facts),
    'enough-shots': enoughShots(facts),
    'plan-first': stateOfPlan[facts.plan],
    'exclusion-rule': exclusionRule(facts),
    'exclusions-even': exclusionsEven(facts),
    'same-ball': sameBall(facts),
    conditions: missingConditions(facts.written).length === 0 ? 'yes' : 'not-recorded',
    'reading-measured': readingMeasured(facts),
    'hitter-blind': answeredByAll(facts.written.hitters.map(({ sawNumbers }) => not(sawNumbers))),
    hitters: judgedGolfers(facts.session).judged.length >= fewestHittersAsUnit ? 'yes' : 'no',
    interests: facts.written.hitters.every(({ linkToShop }) => linkToShop !== undefined)
      ? 'yes'
      : 'not-recorded',
    'device-accuracy': deviceAccuracy(facts),
    'shot-numbers': shotNumbers(facts),
  };
  return fairnessIds.flatMap((id) => {
    const state = states[id];
    return state === null ? [] : [{ id, state, why: fairnessWhy[id] }];
  });
}

const isFairnessId = (key: string): key is FairnessId => Object.hasOwn(fairnessWhy, key);
const fairnessIds = Object.keys(fairnessWhy).filter(isFairnessId);

const not = (answer: boolean | undefined): boolean | undefined =>
  answer === undefined ? undefined : !answer;

/** What only the shop can say: nothing in the files shows it. */
function answeredByAll(answers: readonly (boolean | undefined)[]): State {
  if (answers.includes(false)) return 'no';
  return answers.includes(undefined) ? 'not-recorded' : 'stated';
}

/** The metrics chosen before hitting. */
function primaries(metrics: readonly MetricFindings[]): readonly MetricFindings[] {
  return metrics.filter(({ role }) => role === 'primary');
}

function primaryOverlays(metrics: readonly MetricFindings[]): ReadonlySet<OverlayId> {
  return new Set(primaries(metrics).flatMap(({ pairs }) => pairs.flatMap(({ overlays }) => overlays)));
}

/** Sheets that say nothing but what was compared leave the question open. */
function oneThingVaried({ written }: FairnessFacts): State {
  const { differing, partly, alike } = buildDifferences(written);
  if (differing.length > 0) return 'no';
  return partly.length > 0 || alike === 0 ? 'not-recorded' : 'stated';
}

const openByOrder: readonly OverlayId[] = [
  'one-after-another',
  'order-lever',
  'order-drift',
  'order-few-visits',
];

function fairOrder({ order, metrics }: FairnessFacts): State {
  if (order.kind === 'unknown') return 'not-recorded';
  const overlays = primaryOverlays(metrics);
  if (openByOrder.some((id) => overlays.has(id))) return 'no';
  return order.rowsInHitOrder ? 'yes' : 'stated';
}

function warmUp({ session, written: { plan } }: FairnessFacts): State {
  if (session.warmUps > 0) return 'yes';
  if (plan?.warmUp === undefined) return 'not-recorded';
  return /^(none|no|without)\b/i.test(plan.warmUp) ? 'no' : 'stated';
}

/**
 * One hitter: the gap that matters is found four times in five. Several: no interval is wider than the gap that
 * matters to either side.
 */
function enoughShots({ metrics }: FairnessFacts): State {
  const enough = primaries(metrics).every(({ detectable, matters, pairs }) => {
    if (detectable !== null) return detectable <= matters;
    const widths = pairs.map(({ ci }) => (ci === null ? Number.POSITIVE_INFINITY : (ci[1] - ci[0]) / 2));
    return Math.max(...widths) <= matters;
  });
  return enough ? 'yes' : 'no';
}

/** A plan that only the shop dates is no record: it could have been written afterwards. */
const stateOfPlan: Readonly<Record<PlanStanding, State>> = {
  'on-record': 'yes',
  'on-record-that-day': 'yes',
  stated: 'stated',
  changed: 'no',
  afterwards: 'no',
  'not-said': 'not-recorded',
};

/** A rule stands in the plan, and is as old as that is. */
function exclusionRule({ plan, written }: FairnessFacts): State {
  return written.plan?.exclusionRule === undefined ? 'not-recorded' : stateOfPlan[plan];
}

/** Shots left out of each contender, in the order of the report. */
export function leftOutCounts({
  contenders,
  shots,
}: Session): readonly { readonly id: string; readonly count: number }[] {
  return contenders.map((id) => ({
    id,
    count: shots.filter(({ contender, excluded }) => contender === id && excluded !== null).length,
  }));
}

/** One shot more or less is even; so much of a difference that the answer changes is not. */
function exclusionsEven({ session, metrics }: FairnessFacts): State {
  const counts = leftOutCounts(session).map(({ count }) => count);
  const even = Math.max(...counts) - Math.min(...counts) <= 1;
  return even && !primaryOverlays(metrics).has('depends-on-left-out') ? 'yes' : 'no';
}

function sameBall({ written }: FairnessFacts): State | null {
  if (/\bballs?\b/i.test(written.varied)) return null;
  const { held, conditions, contenders } = written;
  const own = contenders.flatMap(({ build }) => build?.ball_model ?? build?.ball ?? []);
  if (new Set(own).size > 1) return 'no';
  const stated = conditions.ball?.sameForAll;
  if (stated !== undefined) return stated ? 'stated' : 'no';
  return held.ball !== undefined || held.ball_model !== undefined ? 'stated' : 'not-recorded';
}

/** Conditions that others need and the report does not give, by the words a reader sees. */
export function missingConditions({ conditions }: Pick<WrittenConditions, 'conditions'>): readonly string[] {
  const { place, surface, temperature, altitude, wind } = conditions;
  const indoors = /\bindoors?\b/i.test(place ?? '');
  return [
    ...(place === undefined ? ['place'] : []),
    ...(surface === undefined ? ['surface'] : []),
    ...(temperature === undefined ? ['temperature'] : []),
    ...(altitude === undefined ? ['altitude'] : []),
    ...(wind === undefined && !indoors ? ['wind'] : []),
  ];
}

/** Whether the shop says how a metric was read; where it does not, measured is only the usual guess. */
export function isReadingStated(
  { conditions, columns }: Pick<WrittenConditions, 'conditions' | 'columns'>,
  metric: MetricId,
): boolean {
  return (conditions.monitor?.columns?.[metric] ?? columns[metric]?.class) !== undefined;
}

/** The same, and no check that doubts it. */
function readingSaid({ written, problems, session }: FairnessFacts, metric: MetricId): boolean {
  const heading = session.columns[metric]?.heading;
  const doubted = problems.some(
    ({ kind, columnName }) => kind === 'column-looks-estimated' && columnName === heading,
  );
  return isReadingStated(written, metric) && !doubted;
}

function readingMeasured(facts: FairnessFacts): State {
  const own = primaries(facts.metrics);
  if (own.some(({ class: kind }) => kind === 'modelled' || kind === 'estimated')) return 'no';
  return own.every(({ id }) => readingSaid(facts, id)) ? 'stated' : 'not-recorded';
}

function deviceAccuracy({ written, metrics }: FairnessFacts): State {
  const stated = written.conditions.monitor?.statedAccuracy?.byMetric ?? {};
  const own = primaries(metrics).map(({ id, matters, pairs }) => {
    const accuracy = stated[id]?.value;
    if (accuracy === undefined) return undefined;
    return accuracy < matters && !pairs.some(({ overlays }) => overlays.includes('near-device'));
  });
  return answeredByAll(own);
}

function shotNumbers({ session, problems }: FairnessFacts): State {
  if (problems.some(({ kind }) => kind === 'shots-missing')) return 'no';
  return session.shots.some(({ shotNo }) => shotNo === null) ? 'not-recorded' : 'yes';
}
