import { buildDifferences, type BuildComparison } from '../findings/buildDifferences.ts';
import { leftOutCounts, missingConditions } from '../findings/fairness.ts';
import type {
  FairnessCheck,
  MetricFindings,
  OrderKind,
  OverlayId,
  PlanStanding,
} from '../findings/findings.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Session } from '../intake/session.ts';
import type { MetricId } from '../trade/metrics.ts';
import { primaryMetrics } from './answers.ts';
import type { Telling } from './telling.ts';

/** How a check came out; `stated`: by the shop's word alone. */
export type FairnessState = 'yes' | 'no' | 'not-recorded' | 'stated';

/** What was found for one check; numbers in SI units, words of the shop as typed. */
export type FairnessFact =
  | ({ readonly check: 'one-thing-varied' } & BuildComparison)
  | { readonly check: 'order'; readonly order: OrderKind; readonly openBy: readonly OverlayId[] }
  | { readonly check: 'warm-up'; readonly swings: number; readonly stated: string | null }
  | { readonly check: 'enough-shots'; readonly measures: readonly Reach[] }
  | { readonly check: 'plan-first'; readonly plan: PlanStanding; readonly day: string | null }
  | {
      readonly check: 'exclusion-rule';
      readonly rule: string | null;
      readonly made: 'before' | 'not-before' | 'not-said';
    }
  | {
      readonly check: 'exclusions-even';
      readonly leftOut: readonly { readonly id: string; readonly count: number }[];
      readonly answerChanges: boolean;
    }
  | { readonly check: 'same-ball'; readonly ball: 'same' | 'not-same' | 'described' | 'not-said' }
  | { readonly check: 'conditions'; readonly missing: readonly string[] }
  | {
      readonly check: 'reading-measured';
      readonly measures: readonly MetricId[];
      readonly calculated: readonly MetricId[];
      readonly stated: boolean;
    }
  | {
      readonly check: 'hitter-blind';
      readonly golfers: number;
      readonly saw: 'yes' | 'no' | 'not-said';
    }
  | { readonly check: 'hitters'; readonly golfers: number }
  | { readonly check: 'interests'; readonly golfers: number; readonly linked: boolean }
  | {
      readonly check: 'device-accuracy';
      readonly measures: readonly {
        readonly metric: MetricId;
        readonly accuracy: number | null;
        readonly matters: number;
      }[];
      readonly near: boolean;
    }
  | { readonly check: 'shot-numbers'; readonly numbers: 'whole' | 'missing' | 'not-all' };

/** What a test could see of a main measure: the difference found four times in five, or else its margin of error. */
export interface Reach {
  readonly metric: MetricId;
  readonly matters: number;
  readonly finds: number | null;
  /** Half of the widest likely range; null where a pair has none. */
  readonly margin: number | null;
}

/** One check of how fair a test was. */
interface FairnessStatement {
  readonly kind: 'fairness';
  readonly about: { readonly of: 'report' };
  readonly state: FairnessState;
  readonly fact: FairnessFact;
  /** Why it matters. */
  readonly why: string;
}

interface Told {
  readonly telling: Telling;
  readonly source: Source;
  readonly session: Session;
}

/** Every check of a report, in the order of the findings. */
export function fairnessOf(told: Told): readonly FairnessStatement[] {
  return told.telling.findings.fairness.map((check) => {
    const fact = factOf(check, told);
    return { kind: 'fairness', about: { of: 'report' }, state: check.state, fact, why: check.why };
  });
}

function factOf({ id, state }: FairnessCheck, { telling, source, session }: Told): FairnessFact {
  const { front } = source;
  const { design, caveats } = telling.findings;
  const own = primaryMetrics(telling.findings);
  switch (id) {
    case 'one-thing-varied':
      return { check: id, ...buildDifferences(front) };
    case 'order':
      return { check: id, order: design.order, openBy: caveats.filter((caveat) => opening.has(caveat)) };
    case 'warm-up':
      return { check: id, swings: session.warmUps, stated: front.plan?.warmUp ?? null };
    case 'enough-shots':
      return { check: id, measures: own.map(reachOf) };
    case 'plan-first':
      return { check: id, plan: design.plan, day: front.plan?.date ?? null };
    case 'exclusion-rule': {
      const { exclusionRule: rule = null, date = null } = front.plan ?? {};
      const made = date === null ? 'not-said' : date < front.date ? 'before' : 'not-before';
      return { check: id, rule, made };
    }
    case 'exclusions-even':
      return { check: id, leftOut: leftOutCounts(session), answerChanges: changesByLeftOut(own) };
    case 'same-ball':
      return { check: id, ball: ballOf(state, front.conditions.ball !== undefined) };
    case 'conditions':
      return { check: id, missing: missingConditions(front) };
    case 'reading-measured':
      return {
        check: id,
        measures: own.map(({ id: metric }) => metric),
        calculated: own
          .filter(({ class: kind }) => kind === 'modelled' || kind === 'estimated')
          .map(({ id: metric }) => metric),
        stated: holds(state),
      };
    case 'hitter-blind':
      return { check: id, golfers: front.hitters.length, saw: sawNumbers(front.hitters) };
    case 'hitters':
      return { check: id, golfers: design.hitters };
    case 'interests':
      return { check: id, golfers: front.hitters.length, linked: holds(state) };
    case 'device-accuracy':
      return {
        check: id,
        measures: own.map(({ id: metric, matters }) => ({
          metric,
          matters,
          accuracy: front.conditions.monitor?.statedAccuracy?.byMetric[metric]?.value ?? null,
        })),
        near: state === 'no',
      };
    case 'shot-numbers':
      return {
        check: id,
        numbers: holds(state) ? 'whole' : state === 'no' ? 'missing' : 'not-all',
      };
  }
}

const opening: ReadonlySet<OverlayId> = new Set(['order-few-visits', 'order-lever', 'order-drift']);

function reachOf({ id, matters, detectable, pairs }: MetricFindings): Reach {
  const margins = pairs.map(({ ci }) => (ci === null ? null : (ci[1] - ci[0]) / 2));
  const judged = margins.flatMap((margin) => margin ?? []);
  const all = judged.length > 0 && judged.length === margins.length;
  return { metric: id, matters, finds: detectable, margin: all ? Math.max(...judged) : null };
}

function changesByLeftOut(own: readonly MetricFindings[]): boolean {
  return own.some(({ pairs }) => pairs.some(({ overlays }) => overlays.includes('depends-on-left-out')));
}

function ballOf(
  state: FairnessCheck['state'],
  described: boolean,
): Extract<FairnessFact, { check: 'same-ball' }>['ball'] {
  if (holds(state)) return 'same';
  if (state === 'no') return 'not-same';
  return described ? 'described' : 'not-said';
}

function sawNumbers(
  hitters: Source['front']['hitters'],
): Extract<FairnessFact, { check: 'hitter-blind' }>['saw'] {
  if (hitters.some(({ sawNumbers: saw }) => saw === true)) return 'yes';
  return hitters.some(({ sawNumbers: saw }) => saw === undefined) ? 'not-said' : 'no';
}

/** Place, surface, temperature, altitude and wind, see `missingConditions`. */
const conditionsAsked = 5;

/**
 * Whether something of what a check asks is recorded, though not all: a page that shows it elsewhere must say what is
 * missing, or "not recorded" would contradict it. Who sells, lent and paid is always answered.
 */
export function isRecordedInPart(fact: FairnessFact): boolean {
  switch (fact.check) {
    case 'interests':
      return true;
    case 'conditions':
      return fact.missing.length < conditionsAsked;
    case 'one-thing-varied':
      return fact.alike > 0 || fact.partly.length > 0;
    case 'same-ball':
      return fact.ball === 'described';
    case 'device-accuracy':
      return fact.measures.some(({ accuracy }) => accuracy !== null);
    default:
      return false;
  }
}

/** How many checks came out in each way. */
export function fairnessCount(
  statements: readonly FairnessStatement[],
): Readonly<Record<FairnessState, number>> {
  const count = (wanted: FairnessState): number => statements.filter(({ state }) => state === wanted).length;
  return {
    yes: count('yes'),
    stated: count('stated'),
    no: count('no'),
    'not-recorded': count('not-recorded'),
  };
}

/** Whether a check holds, shown or as the shop states. */
function holds(state: FairnessCheck['state']): boolean {
  return state === 'yes' || state === 'stated';
}
