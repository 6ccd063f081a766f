import type { Interval, MetricFindings } from '../findings/findings.ts';
import { formatNumber, printAt, roundTo, stepFor, type PrintStep } from './numbers.ts';
import { toReader, unitFor } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import type { UnitId } from '../trade/units.ts';
import { fromCanonical } from '../trade/units.ts';

/** How the numbers of one metric are printed in one system of units. */
export interface Printing {
  readonly unit: UnitId;
  readonly step: PrintStep;
  readonly averageStep: PrintStep;
  readonly matters: number;
}

export type PrintedLimit =
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'almost-nothing' }
  | { readonly kind: 'just-over'; readonly text: string }
  | { readonly kind: 'just-under'; readonly text: string };

export function printingOf(metric: MetricFindings, { system }: Telling): Printing {
  const unit = unitFor(metric.id, system);
  const halves = [...metric.pairs, ...metric.byContender].flatMap(({ ci }) =>
    ci === null ? [] : [toReader((ci[1] - ci[0]) / 2, metric.id, system)],
  );
  const step = stepFor(unit, halves.length === 0 ? null : Math.max(...halves));
  return { unit, step, averageStep: step, matters: toReader(metric.matters, metric.id, system) };
}

export const printDifference = (si: number, { unit, step }: Printing): string =>
  printAt(Math.abs(fromCanonical(si, unit)), step);

export const printAverage = (si: number, { unit, averageStep }: Printing): string =>
  printAt(fromCanonical(si, unit), averageStep);

export const printSize = (si: number, printing: Printing): string => printDifference(si, printing);

export function printLimits(
  [lower, upper]: Interval,
  printing: Printing,
): { readonly lower: PrintedLimit; readonly upper: PrintedLimit } {
  return { lower: printLimit(lower, 'lower', printing), upper: printLimit(upper, 'upper', printing) };
}

function printLimit(si: number, end: 'lower' | 'upper', { unit, step, matters }: Printing): PrintedLimit {
  const value = fromCanonical(si, unit);
  const size = Math.abs(value);
  const away = end === 'upper' ? value > 0 : value < 0;
  const steps = Number((size / step.step).toFixed(9));
  const rounded = roundTo((away ? Math.ceil(steps) : Math.floor(steps)) * step.step, step);
  if (size < step.step / 2 || rounded === 0) return { kind: 'almost-nothing' };
  if (size > matters && rounded <= matters) return { kind: 'just-over', text: String(matters) };
  if (size < matters && rounded >= matters) return { kind: 'just-under', text: String(matters) };
  return { kind: 'number', text: formatNumber(rounded, step.decimals) };
}
