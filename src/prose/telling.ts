import type { Findings, MetricFindings, PairFindings } from '../findings/findings.ts';
import { comparativeOf } from './comparatives.ts';
import { toReader, unitFor, type UnitSystem } from './readerUnits.ts';
import { stepFor, type PrintStep } from './numbers.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { UnitId } from '../trade/units.ts';
import { printingOf, type Printing } from './printSteps.ts';

/** What a sentence needs to know besides the figures: how things are called, and in which units. */
export interface Telling {
  readonly findings: Findings;
  readonly system: UnitSystem;
  /** In whose units scales of charts end on round numbers: those of the shop, so that both draw every mark alike. */
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

/** One gap seen from the contender that had more of the metric, in the reader's unit. */
export interface ToldGap {
  readonly ahead: string;
  readonly behind: string;
  readonly aheadId: string;
  readonly behindId: string;
  /** Gap and interval counted towards `ahead`; the lower limit is negative where the order may be the other way. */
  readonly gap: number;
  readonly lower: number;
  readonly upper: number;
  readonly matters: number;
  readonly unit: UnitId;
  readonly step: PrintStep;
  readonly more: string;
  readonly verb: string;
}

/** The gap of a judged pair as it is told; null where it was not judged. */
export function toldGap(pair: PairFindings, metric: MetricFindings, telling: Telling): ToldGap | null {
  if (pair.estimate === null || pair.ci === null) return null;
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const unit = unitFor(metric.id, telling.system);
  const { verb, more, less } = comparativeOf(metric.id);
  // Less is what customers want of some metrics: then the one with less is named first.
  const wantsLess = metric.better === 'less';
  const aFirst = wantsLess ? pair.estimate <= 0 : pair.estimate >= 0;
  const [aheadId, behindId] = aFirst ? [pair.a, pair.b] : [pair.b, pair.a];
  const flip = pair.estimate >= 0 ? 1 : -1;
  const [low, high] = [pair.ci[0] * flip, pair.ci[1] * flip].sort((x, y) => x - y);
  return {
    ahead: telling.nameOf(aheadId),
    behind: telling.nameOf(behindId),
    aheadId,
    behindId,
    gap: read(Math.abs(pair.estimate)),
    lower: read(low ?? 0),
    upper: read(high ?? 0),
    matters: read(metric.matters),
    unit,
    step: stepFor(unit, read((pair.ci[1] - pair.ci[0]) / 2)),
    more: wantsLess ? less : more,
    verb,
  };
}
