import type { Session } from '../intake/session.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { HitOrder } from './hitOrder.ts';
import type { Sample } from './samples.ts';

/** The readings of a metric that count, the session that they are of, and how its shots followed one another. */
export interface OrderedSamples {
  readonly session: Session;
  readonly metric: MetricId;
  readonly samples: readonly Sample[];
  readonly order: HitOrder;
}
