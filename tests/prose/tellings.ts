import { aheadBy, statusOf } from '../../src/findings/answerStatus.ts';
import type {
  Design,
  Findings,
  MetricFindings,
  OpenCause,
  OverlayId,
  PairFindings,
} from '../../src/findings/findings.ts';
import { firstLookShots } from '../../src/findings/thresholds.ts';
import { isGap, type VerdictId } from '../../src/findings/verdict.ts';
import { nounOf } from '../../src/prose/noun.ts';
import type { UnitSystem } from '../../src/prose/readerUnits.ts';
import type { Telling } from '../../src/prose/telling.ts';
import { metrics, type MetricId } from '../../src/trade/metrics.ts';
import { canonicalUnit } from '../../src/trade/units.ts';

/** Gap and interval of each verdict, in units of the smallest gap that matters. */
const shapes: Readonly<Record<VerdictId, readonly [estimate: number, lower: number, upper: number] | null>> =
  {
    clear: [2.4, 1.4, 3.6],
    'size-unsure': [1.8, 0.4, 3.2],
    'maybe-small': [0.8, 0.1, 1.5],
    small: [0.3, 0.1, 0.5],
    level: [0.1, -0.5, 0.7],
    'too-close': [0.5, -0.6, 2],
    'not-judged': null,
  };

/** What is told of one pair, besides its verdict. */
export interface Told {
  readonly metric: MetricId;
  readonly verdict: VerdictId;
  readonly overlays?: readonly OverlayId[];
  readonly open?: boolean;
  /** The second contender has more. */
  readonly turned?: boolean;
  readonly shots?: readonly [number, number];
  readonly better?: MetricFindings['better'];
  readonly pair?: Partial<PairFindings>;
}

/** A pair `a`, `b` with its verdict's usual gap. */
export function pairOf({
  metric,
  verdict,
  overlays = [],
  open = false,
  turned = false,
  shots = [12, 12],
  better,
  pair = {},
}: Told): PairFindings {
  const { matters } = metrics[metric];
  // Counted by turns a gap over shots is none: then the interval lies off 0 all the same.
  const shape = shapes[overlays.includes('visits-alike') ? 'size-unsure' : verdict];
  const sign = turned ? -1 : 1;
  const [estimate, lower, upper] = (shape ?? [0, 0, 0]).map((value) => value * matters * sign);
  const side = shape === null ? null : aheadBy(estimate ?? 0, better ?? metrics[metric].better);
  const ci: readonly [number, number] = turned ? [upper ?? 0, lower ?? 0] : [lower ?? 0, upper ?? 0];
  return {
    a: 'a',
    b: 'b',
    estimate: shape === null ? null : (estimate ?? 0),
    ci: shape === null ? null : ci,
    level: 0.95,
    p: shape === null ? null : isGap(verdict) ? 0.01 : 0.4,
    method: shape === null ? null : 'welch',
    verdict,
    credit: open ? 'open' : 'contender',
    status: statusOf({
      verdict,
      credit: open ? 'open' : 'contender',
      leans: overlays.includes('leans'),
    }),
    ahead: side === null ? null : side === 'a' ? 'a' : 'b',
    firstLook: Math.min(...shots) < firstLookShots,
    openBecause: open ? openBecause(overlays) : null,
    hitLater: open && overlays.includes('order-lever') ? 'b' : null,
    notJudged:
      shape === null ? { because: 'too-few-shots', contenders: ['b'], fewest: Math.min(...shots) } : null,
    overlays,
    holds: [],
    singleShot: null,
    driftNeeded: null,
    byRounds: null,
    leaveOneOut: null,
    withLeftOut: null,
    device: null,
    atEqualSpeed: null,
    byHitter: [],
    hittersDiffer: [],
    whoGained: null,
    newHitter: null,
    ...pair,
  };
}

/** A metric of two contenders with that one pair. */
export function metricOf(told: Told, rest: Partial<MetricFindings> = {}): MetricFindings {
  const { metric, shots = [12, 12] } = told;
  const { dimension, matters, better, usualClass } = metrics[metric];
  return {
    id: metric,
    unit: canonicalUnit[dimension],
    class: told.overlays?.includes('modelled-reading') === true ? 'modelled' : usualClass,
    looksEstimated: false,
    readBy: 'monitor',
    resolution: matters / 50,
    role: 'primary',
    better: told.better ?? better,
    matters,
    mattersFrom: 'trade',
    mattersUnusual: false,
    byContender: ['a', 'b'].map((id, index) => ({
      id,
      n: shots[index] ?? 0,
      mean: 40 * matters,
      sd: 1.6 * matters,
      ci: [39 * matters, 41 * matters],
      median: 40 * matters,
      min: 37 * matters,
      max: 43 * matters,
      sdCi: [matters, 2.5 * matters],
    })),
    omnibus: null,
    cellsLeftOut: 0,
    golfersLeftOut: [],
    judgedTogether: 1,
    pairs: [pairOf(told)],
    spread: null,
    drift: null,
    trends: [],
    detectable: 1.9 * matters,
    luck: { average: 0.5 * matters, upTo: 1.3 * matters },
    shotsNeeded: [25, 60],
    shotsToShowLevel: 30,
    leading: null,
    ...rest,
  };
}

const plainDesign: Design = {
  hitters: 1,
  golfers: [{ id: 'one', clubSpeed: null, shots: 24 }],
  clubSpeed: null,
  order: 'rotation-order-changed',
  rounds: 12,
  sequence: null,
  unit: 'shot',
  plan: 'not-said',
  plannedInAdvance: false,
};

interface TellingOptions {
  readonly system?: UnitSystem;
  readonly varied?: string;
  readonly design?: Partial<Design>;
  readonly names?: Readonly<Record<string, string>>;
}

const usualNames: Readonly<Record<string, string>> = {
  a: 'Alder',
  b: 'Birch',
  c: 'Cedar',
  d: 'Dogwood',
  e: 'Elm',
  f: 'Fir',
};

/** The cause that an overlay of the order tells; where none does, contenders hit one after another. */
function openBecause(overlays: readonly OverlayId[]): OpenCause {
  if (overlays.includes('order-unknown')) return 'order-unknown';
  if (overlays.includes('order-lever')) return 'lever';
  if (overlays.includes('order-drift')) return 'drift';
  return overlays.includes('order-few-visits') ? 'few-visits' : 'one-after-another';
}

/** Metrics of an invented report with all that sentences need to know. */
export function tellingFor(own: readonly MetricFindings[], options: TellingOptions = {}): Telling {
  const names = options.names ?? usualNames;
  const ids = own[0]?.byContender.map(({ id }) => id) ?? [];
  const findings: Findings = {
    version: 2,
    slug: 'invented',
    title: 'Invented',
    date: '2026-04-11',
    units: 'SI',
    contenders: ids.map((id) => ({ id, label: names[id] ?? id, shots: 12, excluded: 0 })),
    design: { ...plainDesign, ...options.design },
    metrics: own,
    straighter: null,
    explored: { looked: 0, byChance: 0 },
    swing: null,
    yards: [],
    landing: null,
    launchWindow: null,
    claims: [],
    fairness: [],
    caveats: [
      ...new Set(
        own
          .filter(({ role }) => role === 'primary')
          .flatMap(({ pairs }) => pairs.flatMap(({ overlays }) => overlays)),
      ),
    ],
    problems: [],
    seed: '0123456789abcdef',
  };
  const { one, many } = nounOf(options.varied ?? 'head');
  return {
    findings,
    system: options.system ?? 'yards',
    scalesIn: options.system ?? 'yards',
    noun: one,
    nouns: many,
    nameOf: (id) => names[id] ?? id,
    the: (id) => names[id] ?? id,
    golfer: (id) => `golfer ${id}`,
  };
}

/** Every way a pair can come out that its sentence depends on, short of its metric. */
export const waysToComeOut: readonly {
  readonly name: string;
  readonly told: Omit<Told, 'metric'>;
  readonly design?: Partial<Design>;
}[] = [
  ...(['clear', 'size-unsure', 'maybe-small', 'small', 'level', 'too-close', 'not-judged'] as const).map(
    (verdict) => ({
      name: verdict,
      told: { verdict, ...(verdict === 'not-judged' ? { shots: [12, 4] as const } : {}) },
    }),
  ),
  { name: 'clear, first look', told: { verdict: 'clear', shots: [6, 7], overlays: ['few-shots'] } },
  { name: 'too close, shots of one turn alike', told: { verdict: 'too-close', overlays: ['visits-alike'] } },
  ...(['clear', 'size-unsure', 'maybe-small', 'small', 'level'] as const).map((verdict) => ({
    name: `${verdict}, leans`,
    told: { verdict, overlays: ['leans'] as const },
  })),
  ...(['clear', 'size-unsure', 'maybe-small', 'small', 'level', 'too-close'] as const).flatMap((verdict) => [
    {
      name: `${verdict}, hit one after another`,
      told: { verdict, open: true, overlays: ['one-after-another'] as const },
      design: { order: 'one-after-another' as const, sequence: ['b', 'a'] },
    },
    {
      name: `${verdict}, stated one after another`,
      told: { verdict, open: true, overlays: ['one-after-another'] as const },
      design: { order: 'stated-one-after-another' as const },
    },
    {
      name: `${verdict}, order unknown`,
      told: { verdict, open: true, overlays: ['order-unknown'] as const },
      design: { order: 'unknown' as const },
    },
    {
      name: `${verdict}, long lever`,
      told: { verdict, open: true, overlays: ['order-lever'] as const },
      design: { order: 'mixed' as const },
    },
    {
      name: `${verdict}, drift`,
      told: { verdict, open: true, overlays: ['order-drift'] as const },
    },
    {
      name: `${verdict}, few turns`,
      told: { verdict, open: true, overlays: ['order-few-visits'] as const },
      design: { order: 'mini-blocks' as const },
    },
    {
      name: `${verdict}, stated turns`,
      told: { verdict, open: true, overlays: ['order-few-visits'] as const },
      design: { order: 'stated-mini-blocks' as const },
    },
  ]),
  { name: 'not judged, one shot', told: { verdict: 'not-judged', shots: [12, 1] } },
  { name: 'not judged, no reading', told: { verdict: 'not-judged', shots: [0, 12] } },
  { name: 'not judged, no reading and too few', told: { verdict: 'not-judged', shots: [0, 3] } },
  { name: 'not judged, both too few', told: { verdict: 'not-judged', shots: [3, 4] } },
  { name: 'not judged, all the same', told: { verdict: 'not-judged', shots: [12, 12] } },
  {
    name: 'not judged, one of two golfers hit too few',
    told: { verdict: 'not-judged' },
    design: { hitters: 2 },
  },
  {
    name: 'not judged, fewer than six golfers hit both',
    told: { verdict: 'not-judged' },
    design: { hitters: 8, unit: 'hitter' },
  },
];
