import type { Findings } from '../findings/findings.ts';
import type { MetricId } from '../trade/metrics.ts';
import { printingOf, type Printing } from './printSteps.ts';
import type { UnitSystem } from './readerUnits.ts';

/** What a sentence needs to know besides the figures: how things are called, and in which units. */
export interface Telling {
  readonly findings: Findings;
  readonly system: UnitSystem;
  /** The units in which chart scales end on round numbers: always the shop's, so that both systems place every mark alike. */
  readonly scalesIn: UnitSystem;
  /** What the test varied, one of it: head, shaft, set of grooves. */
  readonly noun: string;
  /** The same, several of it: heads, shafts, grooves. */
  readonly nouns: string;
  readonly nameOf: (contender: string) => string;
  /** The name in running text, with its article where it is a plain word: "the hybrid", "Heron". */
  readonly the: (contender: string) => string;
  /** A golfer by club speed and handicap, "88 mph, handicap 16-20", or by the id that the report gives; in these units. */
  readonly golfer: (golfer: string, system: UnitSystem) => string;
}

/**
 * How the numbers of a metric of this report are printed.
 *
 * @throws where the report does not have the metric
 */
export function printingFor(metric: MetricId, telling: Telling): Printing {
  const own = telling.findings.metrics.find(({ id }) => id === metric);
  if (own === undefined) throw new Error(`no ${metric} in ${telling.findings.slug}`);
  return printingOf(own, telling);
}
