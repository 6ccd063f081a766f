import type { Findings, Interval, MetricFindings } from '../findings/findings.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { fromCanonical, type UnitId } from '../trade/units.ts';
import { formatStep, niceStep, printStated, roundTo, type PrintStep } from './numbers.ts';
import { toReader, unitFor, type UnitSystem } from './readerUnits.ts';

/** Digits of an uncertainty that are kept: a step is at most this part of the widest half-width. */
const partOfHalfWidth = 2.5;
/** No distance is told more finely, in the reader's unit: half a yard, half a metre. */
const finestDistance = 0.5;
/** Beyond these decimals two numbers are one: what differs there came with the conversion of units. */
const sameDecimals = 9;

/** How the numbers of one metric are printed in one system of units, everywhere in a report. */
export interface Printing {
  readonly metric: MetricId;
  readonly unit: UnitId;
  /** Of differences, limits, spreads, and what luck does. */
  readonly step: PrintStep;
  /** Of averages: finer where rounding would keep printed averages from giving the printed difference. */
  readonly averageStep: PrintStep;
  /** Of single readings: as fine as the file has them, and at most two digits finer than averages. */
  readonly readingStep: PrintStep;
  /** The smallest difference that matters, reader's unit. */
  readonly matters: number;
}

/** A printed limit of a likely range: a number, or in words where a number would say too much or too little. */
export type PrintedLimit =
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'almost-nothing' }
  | { readonly kind: 'just-over'; readonly text: string }
  | { readonly kind: 'just-under'; readonly text: string };

const made = new WeakMap<Findings, Map<string, Printing>>();

/** The printing of a metric of a report; one step a metric a report and system. */
export function printingOf(
  metric: MetricFindings,
  { findings, system }: { readonly findings: Findings; readonly system: UnitSystem },
): Printing {
  const known = made.get(findings) ?? new Map<string, Printing>();
  made.set(findings, known);
  const key = `${metric.id} ${system}`;
  const printing = known.get(key) ?? makePrinting(metric, system);
  known.set(key, printing);
  return printing;
}

function makePrinting(metric: MetricFindings, system: UnitSystem): Printing {
  const unit = unitFor(metric.id, system);
  const read = (value: number): number => toReader(value, metric.id, system);
  const halfWidths = metric.pairs.flatMap(({ ci }) => (ci === null ? [] : [read(ci[1] - ci[0]) / 2]));
  const ownWidths = metric.byContender.flatMap(({ ci }) => (ci === null ? [] : [read(ci[1] - ci[0]) / 2]));
  const widest = Math.max(...(halfWidths.length > 0 ? halfWidths : ownWidths), 0);
  const step = stepOf(widest > 0 ? widest : read(metric.matters), metric.id, read(metric.resolution));
  const ofAverages = averageStep(metric, step, read);
  return {
    metric: metric.id,
    unit,
    step,
    averageStep: ofAverages,
    // What our flight model calculates is no reading, and no finer than the average of it.
    readingStep:
      metric.readBy === 'flight-model'
        ? ofAverages
        : niceStep(Math.max(read(metric.resolution) * 1.0001, tenth(tenth(ofAverages)).step)),
    matters: read(metric.matters),
  };
}

/**
 * The step for numbers known to within `halfWidth`, 1, 2 or 5 times a power of ten; never finer than the readings
 * themselves nor, of a distance, than half a unit.
 */
export function stepOf(halfWidth: number, metric: MetricId, finest = 0): PrintStep {
  const floor = metrics[metric].dimension === 'distance' ? Math.max(finest, finestDistance) : finest;
  return niceStep(Math.max(halfWidth / partOfHalfWidth, floor));
}

/**
 * The step of differences where averages, rounded to it and subtracted, lie within half of it of every printed difference;
 * else the next power of ten below, and none finer: an average with more digits would claim to be known like that.
 */
function averageStep(metric: MetricFindings, step: PrintStep, read: (value: number) => number): PrintStep {
  const means = new Map(metric.byContender.map(({ id, mean }) => [id, mean]));
  const agrees = metric.pairs.every(({ a, b, estimate }) => {
    const [first, second] = [means.get(a) ?? null, means.get(b) ?? null];
    if (estimate === null || first === null || second === null) return true;
    // Several golfers are each counted alike: their difference need not be that of all shots' averages.
    if (clean(first - second - estimate) !== 0) return true;
    const apart = clean(roundTo(read(first), step) - roundTo(read(second), step));
    return clean(Math.abs(apart - roundTo(read(estimate), step)) - step.step / 2) <= 0;
  });
  return agrees ? step : tenth(step);
}

function tenth({ step, decimals }: PrintStep): PrintStep {
  // A tenth of 5 or 2 would be no further digit to a reader, but an odd one.
  const first = Number(`1e${Math.ceil(Math.log10(step) - 1e-9) - 1}`);
  return first < step
    ? { step: first, decimals: Math.max(0, Math.round(-Math.log10(first))) }
    : { step: step / 10, decimals: decimals + 1 };
}

/** A difference, its sign dropped: who has more is said in words. */
export function printDifference(si: number, printing: Printing): string {
  return formatStep(Math.abs(inUnit(si, printing)), printing.step);
}

/** An average, or another value of the metric itself. */
export function printAverage(si: number, printing: Printing): string {
  return formatStep(inUnit(si, printing), printing.averageStep);
}

/** One reading as the file has it. */
export function printReading(si: number, printing: Printing): string {
  return formatStep(inUnit(si, printing), printing.readingStep);
}

/** A spread, what luck does, the least difference found: at the step of differences, and never a bare 0. */
export function printSize(si: number, printing: Printing): string {
  const size = Math.abs(inUnit(si, printing));
  const rounded = roundTo(size, printing.step);
  return formatStep(rounded === 0 && size > 0 ? printing.step.step : rounded, printing.step);
}

/** Both limits of a range counted towards whoever is named first, rounded outwards, signs dropped. */
export function printLimits(
  [lower, upper]: Interval,
  printing: Printing,
): { readonly lower: PrintedLimit; readonly upper: PrintedLimit } {
  return {
    lower: printLimit(inUnit(lower, printing), 'lower', printing),
    upper: printLimit(inUnit(upper, printing), 'upper', printing),
  };
}

/** Both limits of an average, signs kept, rounded outwards to the step of differences. */
export function averageLimits([lower, upper]: Interval, printing: Printing): readonly [string, string] {
  const { step } = printing.step;
  const steps = (si: number): number => clean(inUnit(si, printing) / step);
  return [
    formatStep(Math.floor(steps(lower)) * step, printing.step),
    formatStep(Math.ceil(steps(upper)) * step, printing.step),
  ];
}

function printLimit(value: number, end: 'lower' | 'upper', { step, matters }: Printing): PrintedLimit {
  const size = Math.abs(clean(value));
  // Outwards is away from 0 for the upper end of what lies beyond 0, and for the lower end of what lies below it.
  const away = end === 'upper' ? value > 0 : value < 0;
  const steps = clean(size / step.step);
  const rounded = clean((away ? Math.ceil(steps) : Math.floor(steps)) * step.step);
  if (size < step.step / 2 || rounded === 0) return { kind: 'almost-nothing' };
  const threshold = clean(matters);
  if (size > threshold && rounded <= threshold) return { kind: 'just-over', text: printStated(threshold) };
  if (size < threshold && rounded >= threshold) return { kind: 'just-under', text: printStated(threshold) };
  return { kind: 'number', text: formatStep(rounded, step) };
}

function inUnit(si: number, { unit }: Printing): number {
  return fromCanonical(si, unit);
}

function clean(value: number): number {
  return Number(value.toFixed(sameDecimals));
}
