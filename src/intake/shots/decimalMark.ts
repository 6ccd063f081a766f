import { isWithinLimits } from '../../trade/limits.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { toCanonical, units, type UnitId } from '../../trade/units.ts';
import { readCell, type NumberCell } from './cell.ts';
import type { Report } from './collector.ts';
import type { MetricColumn } from './columns.ts';
import type { DecimalMark, Numeral, Reading } from './numeral.ts';
import type { Table } from './table.ts';

/** How the numbers of a file are to be read: one mark throughout, or each cell by itself. */
export type MarkDecision = DecimalMark | 'mixed';

interface Tally {
  count: number;
  first: { readonly line: number; readonly column: MetricColumn; readonly text: string } | null;
}

const allUnits = Object.values(units);

/** Whether a number as typed can be a value of the metric in the unit stated, or in any where none is. */
export function isPossible(typed: number, metric: MetricId, unit: UnitId | null): boolean {
  if (unit !== null) return isWithinLimits(toCanonical(typed, unit), metric);
  const { dimension } = metrics[metric];
  return allUnits.some(
    ({ id, dimensions }) => dimensions.includes(dimension) && isWithinLimits(toCanonical(typed, id), metric),
  );
}

const signed = (cell: NumberCell, reading: Reading): number =>
  cell.negative ? -reading.value : reading.value;

/** Points and commas written out for a message. */
const named: Readonly<Record<DecimalMark, string>> = { point: 'a point (12.5)', comma: 'a comma (12,5)' };

/**
 * Decides the decimal mark for the whole file from cells that allow one reading. Where every mark is followed by
 * three digits, the limits decide if they can; with two marks in one file each cell is read by itself.
 */
export function decideDecimalMark(tables: readonly Table[], report: Report): MarkDecision {
  const tally: Record<DecimalMark | 'either', Tally> = {
    point: { count: 0, first: null },
    comma: { count: 0, first: null },
    either: { count: 0, first: null },
  };
  const possible: Record<DecimalMark, boolean> = { point: true, comma: true };
  for (const table of tables) {
    for (const column of table.columns.metrics) {
      const open = { cells: 0, point: 0, comma: 0 };
      for (const { cells, line } of table.rows) {
        const text = cells[column.index] ?? '';
        if (!text.includes('.') && !text.includes(',')) continue;
        const cell = readCell(text);
        if (cell.kind !== 'number') continue;
        const { point, comma } = cell.numeral;
        if (point !== null && comma !== null && point.value === comma.value) continue;
        const which = point === null ? 'comma' : comma === null ? 'point' : 'either';
        tally[which].count += 1;
        tally[which].first ??= { line, column, text };
        if (point === null || comma === null) continue;
        open.cells += 1;
        const unit = cell.unit ?? column.unit;
        if (!isPossible(signed(cell, point), column.metric, unit)) open.point += 1;
        if (!isPossible(signed(cell, comma), column.metric, unit)) open.comma += 1;
      }
      for (const mark of ['point', 'comma'] as const)
        if (isRuledOut(open[mark], open.cells)) possible[mark] = false;
    }
  }
  const { point, comma, either } = tally;
  if (point.count > 0 && comma.count > 0) {
    const minority = point.count < comma.count ? point : comma;
    report('mixed-decimal-marks', {
      ...placeOf(minority),
      expected: `one decimal mark in the whole file: here mostly ${named[minority === point ? 'comma' : 'point']}`,
      found: minority.first?.text ?? null,
      cure: 'check these numbers; each was read by itself, and none was changed',
    });
    return 'mixed';
  }
  if (comma.count > 0) return 'comma';
  if (point.count > 0 || either.count === 0) return 'point';
  if (possible.point === possible.comma) {
    report('decimal-mark-ambiguous', {
      ...placeOf(either),
      expected: 'numbers that can be read in one way',
      found: `${either.first?.text ?? ''}, with ${named.point} or with ${named.comma}`,
      cure: 'export with one decimal, or without thousands marks',
    });
    return 'point';
  }
  const mark = possible.point ? 'point' : 'comma';
  report('decimal-mark-inferred', {
    ...placeOf(either),
    expected: 'a number that tells the decimal mark, such as 12.5 or 12,5',
    found: either.first?.text ?? null,
    cure: `check that the decimal mark is ${named[mark]}; the other reading is physically impossible`,
  });
  return mark;
}

const placeOf = ({ first }: Tally) =>
  first === null
    ? {}
    : { line: first.line, column: first.column.index + 1, columnName: first.column.heading };

/** A reading of a whole column is ruled out by more than the odd impossible cell: that may be a slip of typing. */
export function isRuledOut(impossible: number, cells: number): boolean {
  if (cells <= 3) return impossible > 0;
  return impossible >= 2 && impossible >= 0.1 * cells;
}

/** The reading of a numeral under the file's decision; null where two readings survive. */
export function chooseReading(
  numeral: Numeral,
  mark: MarkDecision,
  fitsLimits: (value: number) => boolean,
): Reading | null {
  const { point, comma } = numeral;
  if (mark === 'point') return point;
  if (mark === 'comma') return comma;
  if (point === null || comma === null || point.value === comma.value) return point ?? comma;
  const [pointFits, commaFits] = [fitsLimits(point.value), fitsLimits(comma.value)];
  if (pointFits === commaFits) return null;
  return pointFits ? point : comma;
}
