import type { Delivery, DeliveryMeasure } from '../flight/delivery.ts';
import { calibratedModels } from '../flight/calibratedModels.ts';
import { coefficientSets } from '../flight/coefficientSets.ts';
import { flightModel } from '../flight/flightModel.ts';
import { launchesOf } from '../flight/launchesOf.ts';
import { meanLaunch } from '../flight/meanLaunch.ts';
import { quickStep } from '../flight/quickStep.ts';
import { priceInMetres, type Price } from '../flight/priceInMetres.ts';
import type { PricedMetric } from '../flight/tradeSensitivities.ts';
import type { Session } from '../intake/session.ts';
import { meanOf } from '../stats/moments.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import type { AnalysisInput } from './analysisInput.ts';
import type { Interval, SwingFindings, SwingPair } from './findings.ts';
import type { Gap } from './gap.ts';
import { samplesOf } from './samples.ts';
import { shotGaps } from './shotGaps.ts';
import { confidence } from './thresholds.ts';

/** What of the swing is held beside each other. */
const measures: readonly DeliveryMeasure[] = ['club_speed', 'attack_angle', 'club_path', 'face_to_path'];

const isPriced = (metric: MetricId): metric is PricedMetric =>
  metric === 'carry' || metric === 'total' || metric === 'side';

/**
 * Whether the swing was the same with every contender, each measure of it priced in metres of the first primary
 * metric (of carry, where that one has no price). Null for several hitters, and where no measure was read.
 */
export function swingOf(input: AnalysisInput): SwingFindings | null {
  const { session, primaries } = input;
  const read = measures.filter((measure) => session.columns[measure] !== undefined);
  if (session.hitters.length !== 1 || read.length === 0) return null;
  const [first = 'carry'] = primaries;
  const metric = isPriced(first) ? first : 'carry';
  const marginOf = (id: MetricId): number => (input.matters[id] ?? metrics[id].matters) / 2;
  const level = 1 - (1 - confidence) / read.length;
  const shot = meanDelivery(session);
  const models = calibratedModels([], flightModel({ step: quickStep }), coefficientSets);
  // Prices are straight lines over differences as small as these, so one unit is flown and scaled.
  const unitPrice = (id: DeliveryMeasure, of: PricedMetric): Price =>
    priceInMetres(id, 1, { metric: of, shot, models });
  const found = read.map((id) => {
    const column = session.columns[id];
    const { gaps } = shotGaps(samplesOf(session, id), level, column?.step ?? 0);
    const own = unitPrice(id, metric);
    const known = own.by !== 'flight-model' || isTold(id, session);
    const across =
      id === 'club_path' || id === 'face_to_path' ? (metric === 'side' ? 'carry' : 'side') : null;
    const other = across === null ? null : ({ metric: across, ...unitPrice(id, across) } as const);
    return {
      id,
      pricedBy: own.by,
      perUnit: known ? ([own.low, own.high] as const) : null,
      pairs: gaps.map((gap): SwingPair => {
        const shared = { a: gap.a, b: gap.b, estimate: gap.estimate, ci: gap.ci };
        if (!known) return { ...shared, worth: null, across: null, answer: 'not-known' };
        const worth = worthOf(gap, own);
        const sideways = other === null ? null : { metric: other.metric, ...worthOf(gap, other) };
        const answer = answerOf(gap, [
          { ...worth, margin: marginOf(metric) },
          ...(sideways === null ? [] : [{ ...sideways, margin: marginOf(sideways.metric) }]),
        ]);
        return { ...shared, worth, across: sideways, answer };
      }),
    };
  });
  return { metric, margin: marginOf(metric), level, measures: found };
}

/** Whether the file has what the flight model needs to price a turn of path or face: without, the ball would seem to start straight. */
function isTold(measure: DeliveryMeasure, { columns }: Session): boolean {
  const directed = columns.launch_direction !== undefined;
  const tilted = columns.spin_axis !== undefined || columns.side_spin !== undefined;
  if (measure === 'club_path') return directed;
  return measure === 'face_to_path' ? directed && tilted : true;
}

interface Worth {
  readonly estimate: number;
  readonly ci: Interval;
}

function worthOf(gap: Gap, { low, high }: Price): Worth {
  // Adding 0 turns a minus zero, from a price of nothing, into a plain one.
  const ends = gap.ci.flatMap((end) => [low, high].map((price) => price * end + 0));
  return { estimate: (gap.estimate * (low + high)) / 2 + 0, ci: [Math.min(...ends), Math.max(...ends)] };
}

/** Whether a difference is off zero and worth the margin or more. */
export function countsAsDifferent({ estimate, ci: [low, high] }: Worth, margin: number): boolean {
  return (low > 0 || high < 0) && Math.abs(estimate) >= margin;
}

type Priced = Worth & { readonly margin: number };

/** The swing was another where either price is surely off zero and matters, and the same where every price is small. */
function answerOf(gap: Gap, worths: readonly Priced[]): SwingPair['answer'] {
  const off = gap.ci[0] > 0 || gap.ci[1] < 0;
  if (off && worths.some((worth) => countsAsDifferent(worth, worth.margin))) return 'different';
  return worths.every(({ ci, margin }) => -margin < ci[0] && ci[1] < margin) ? 'same' : 'cannot-tell';
}

/** The mean shot of the session; null where no launch was read. */
function meanDelivery(session: Session): Delivery | null {
  const counted = session.shots.filter(({ excluded }) => excluded === null);
  const launches = launchesOf(counted.map(({ values }) => values)).filter((launch) => launch !== null);
  if (launches.length === 0) return null;
  const mean = (metric: MetricId): number | null => {
    const values = counted.flatMap(({ values: own }) => own[metric] ?? []);
    return values.length === 0 ? null : meanOf(values);
  };
  return { launch: meanLaunch(launches), clubSpeed: mean('club_speed'), spinLoft: mean('spin_loft') };
}

/** Measures in which a pair's swing differed. */
export function differentMeasures(
  swing: SwingFindings | null,
  a: string,
  b: string,
): readonly DeliveryMeasure[] {
  return (swing?.measures ?? [])
    .filter(({ pairs }) => pairs.some((pair) => pair.a === a && pair.b === b && pair.answer === 'different'))
    .map(({ id }) => id);
}
