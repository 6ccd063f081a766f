import type { Delivery, DeliveryMeasure } from '../flight/delivery.ts';
import { calibratedModels } from '../flight/calibratedModels.ts';
import { coefficientSets } from '../flight/coefficientSets.ts';
import { flightModel } from '../flight/flightModel.ts';
import { launchesOf } from '../flight/launchesOf.ts';
import { meanLaunch } from '../flight/meanLaunch.ts';
import { quickStep } from '../flight/quickStep.ts';
import { priceInMetres } from '../flight/priceInMetres.ts';
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
  const margin = (input.matters[metric] ?? metrics[metric].matters) / 2;
  const level = 1 - (1 - confidence) / read.length;
  const shot = meanDelivery(session);
  const models = calibratedModels([], flightModel({ step: quickStep }), coefficientSets);
  const found = read.map((id) => {
    const column = session.columns[id];
    const { gaps } = shotGaps(samplesOf(session, id), level, column?.step ?? 0);
    // Prices are straight lines over differences as small as these, so one unit is flown and scaled.
    const unit = priceInMetres(id, 1, { metric, shot, models });
    return {
      id,
      pricedBy: unit.by,
      perUnit: [unit.low, unit.high] as const,
      pairs: gaps.map((gap) => swingPair(gap, [unit.low, unit.high], margin)),
    };
  });
  return { metric, margin, level, measures: found };
}

function swingPair(gap: Gap, perUnit: Interval, margin: number): SwingPair {
  // Adding 0 turns a minus zero, from a price of nothing, into a plain one.
  const ends = gap.ci.flatMap((end) => perUnit.map((price) => price * end + 0));
  const worth = (gap.estimate * (perUnit[0] + perUnit[1])) / 2 + 0;
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const off = (low > 0 || high < 0) && (gap.ci[0] > 0 || gap.ci[1] < 0);
  const inside = -margin < low && high < margin;
  const answer = off && Math.abs(worth) >= margin ? 'different' : inside ? 'same' : 'cannot-tell';
  return {
    a: gap.a,
    b: gap.b,
    estimate: gap.estimate,
    ci: gap.ci,
    worth: { estimate: worth, ci: [low, high] },
    answer,
  };
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
