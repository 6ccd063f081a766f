import { shortUnit, toReader, unitFor, type UnitSystem } from '../prose/readerUnits.ts';
import { capitalised } from '../prose/words.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import type { UnitId } from '../trade/units.ts';

/** A column of what a chart draws. */
interface NumberColumn {
  /** Without its unit: "Best estimate". */
  readonly name: string;
  readonly type: 'string' | 'number' | 'integer';
  /** Null for words, counts and what is named by another column. */
  readonly unit: UnitId | null;
  readonly description: string;
}

/** Null where there is no such number. */
type Cell = string | number | null;

/** What a chart draws as numbers, in the units of the shop, to six digits. */
export interface ChartNumbers {
  readonly columns: readonly NumberColumn[];
  readonly rows: readonly (readonly Cell[])[];
}

export function wordsColumn(name: string, description: string): NumberColumn {
  return { name, type: 'string', unit: null, description };
}

export function countColumn(name: string, description: string): NumberColumn {
  return { name, type: 'integer', unit: null, description };
}

/** A column of sizes of one measure. */
export function sizeColumn(
  name: string,
  metric: MetricId,
  system: UnitSystem,
  description: string,
): NumberColumn {
  return { name, type: 'number', unit: unitFor(metric, system), description };
}

/** A column of readings, under the name of the measure. */
export function readingColumn(metric: MetricId, system: UnitSystem): NumberColumn {
  const { name, positive } = metrics[metric];
  const side = positive === null ? '' : ` Positive: ${positive}.`;
  return sizeColumn(capitalised(name), metric, system, `${capitalised(name)} of the shot.${side}`);
}

/** A reading or size of a measure, SI, as a chart draws it; null where there is none. */
export function drawnSize(value: number | null | undefined, metric: MetricId, system: UnitSystem) {
  return value === null || value === undefined ? null : sixDigits(toReader(value, metric, system));
}

/** No reading is finer; what conversion adds lies behind. */
export function sixDigits(value: number): number {
  return Number(value.toPrecision(6));
}

/** The heading of a column with its unit: "Carry (yd)". */
export function headingOf({ name, unit }: NumberColumn): string {
  const sign = unit === null ? '' : unit === 'deg' ? 'deg' : shortUnit(unit);
  return sign === '' ? name : `${name} (${sign})`;
}
