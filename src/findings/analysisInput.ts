import type { Claim } from '../intake/authored/claims.ts';
import type { Front } from '../intake/authored/front.ts';
import type { Session } from '../intake/session.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { PlanStanding } from './findings.ts';

/** How the shop states the shots followed one another, where the file does not keep the order. */
export type StatedOrder = 'random' | 'rotation' | 'mini-blocks' | 'one-after-another' | 'unknown';

/** What the shop wrote of how it tested. */
export type WrittenConditions = Pick<
  Front,
  'varied' | 'date' | 'contenders' | 'held' | 'plan' | 'hitters' | 'conditions' | 'columns'
>;

/** What the analysis needs of a report besides its shots; all of it decided before hitting, as far as it was. */
export interface AnalysisInput {
  readonly slug: string;
  readonly title: string;
  readonly date: string;
  readonly contenders: readonly { readonly id: string; readonly label: string }[];
  readonly primaries: readonly MetricId[];
  /** Which way a metric is wanted, where the report departs from the trade's usual way. */
  readonly better: Readonly<Partial<Record<MetricId, 'more' | 'less' | 'neither'>>>;
  /** Smallest gaps that matter, SI, by report or shop. */
  readonly matters: Readonly<Partial<Record<MetricId, number>>>;
  /** Metrics whose smallest gap that matters is the shop's usual one, not the report's. */
  readonly mattersOfShop: readonly MetricId[];
  /** Stated accuracies of the monitor, SI. */
  readonly accuracy: Readonly<Partial<Record<MetricId, number>>>;
  /** Null where the rows of the files stand in hit order. */
  readonly statedOrder: StatedOrder | null;
  /** Whether the seed of the plan reproduces the order of the rows. */
  readonly orderReproduced: boolean;
  readonly plan: PlanStanding;
  readonly claims: readonly Claim[];
  /** What the shop wrote of the test, for the list of what was fair about it. */
  readonly written: WrittenConditions;
  readonly session: Session;
  /** Seed of every random draw, from the bytes of the session's files. */
  readonly seed: string;
}
