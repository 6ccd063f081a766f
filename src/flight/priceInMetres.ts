import { at } from '../stats/at.ts';
import { launchesAfter, type Delivery, type DeliveryMeasure } from './delivery.ts';
import type { FlightModel } from './flightModel.ts';
import type { Launch } from './launch.ts';
import { tradeSensitivities, type PricedMetric } from './tradeSensitivities.ts';
import { totalOf } from './total.ts';
import { fly } from './trajectory.ts';

interface PriceContext {
  readonly metric: PricedMetric;
  /** the mean shot of the contenders in question; null where no launch was read */
  readonly shot: Delivery | null;
  /** one a coefficient set, tuned to the session where it could be (see `calibratedModels`) */
  readonly models: readonly FlightModel[];
}

/** Metres; low and high over coefficient sets and over what may have happened at impact. */
export interface Price {
  readonly low: number;
  readonly high: number;
  readonly by: 'flight-model' | 'trade-sensitivities';
}

/**
 * What a difference in one delivery measure (m/s or degrees, a minus b) is worth in metres of carry, total or side,
 * all else of the swing held: half of it before and half after the mean shot, so that a difference the other way is
 * worth the negative. Without a launch, or club speed for its own price, by rules of the trade for a driver.
 */
export function priceInMetres(measure: DeliveryMeasure, difference: number, context: PriceContext): Price {
  const { metric, shot, models } = context;
  const after = shot && launchesAfter(shot, measure, difference / 2);
  const before = shot && launchesAfter(shot, measure, -difference / 2);
  if (after === null || before === null || models.length === 0) {
    const ends = tradeSensitivities[metric][measure].map((each) => each * difference);
    return { low: Math.min(...ends), high: Math.max(...ends), by: 'trade-sensitivities' };
  }
  const prices = models.flatMap((model) =>
    after.map((launch, i) => distance(launch, model, metric) - distance(at(before, i), model, metric)),
  );
  return { low: Math.min(...prices), high: Math.max(...prices), by: 'flight-model' };
}

function distance(launch: Launch, model: FlightModel, metric: PricedMetric): number {
  const flight = fly(launch, model);
  if (metric === 'total') return totalOf(flight, model);
  return metric === 'carry' ? flight.carry : flight.side;
}
