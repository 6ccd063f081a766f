import { isWithinLimits } from '../../trade/limits.ts';
import { toCanonical, type UnitId } from '../../trade/units.ts';
import { readCell } from './cell.ts';
import type { MetricColumn } from './columns.ts';
import type { Table } from './table.ts';

interface ShiftedRow {
  /** Position of the row in the table, from 0. */
  readonly row: number;
  /** Position of the cell that was split, from 0. */
  readonly at: number;
  /** The number that was split, as it was meant. */
  readonly meant: string;
}

/**
 * Rows in which an unquoted thousands comma has split a number, so that everything behind it slipped by one cell:
 * `2,765` became 2 and 765. Found where a number is impossible and the row fits with the two joined.
 */
export function findShiftedRows(table: Table, units: readonly (UnitId | null)[]): readonly ShiftedRow[] {
  const columns = table.columns.metrics;
  const fits = (cells: readonly string[]): boolean =>
    columns.every((column, at) => fitsLimits(cells[column.index] ?? '', column, units[at] ?? null));
  const shifted: ShiftedRow[] = [];
  for (const [row, { cells }] of table.rows.entries()) {
    if (fits(cells)) continue;
    for (const { index: at } of columns) {
      const [left = '', right = ''] = [cells[at]?.trim(), cells[at + 1]?.trim()];
      if (!/^[1-9]\d{0,2}$/.test(left) || !/^\d{3}(?:\.\d*)?$/.test(right)) continue;
      const meant = `${left}${right}`;
      if (!fits([...cells.slice(0, at), meant, ...cells.slice(at + 2)])) continue;
      shifted.push({ row, at, meant });
      break;
    }
  }
  return shifted;
}

function fitsLimits(text: string, column: MetricColumn, unit: UnitId | null): boolean {
  const cell = readCell(text);
  if (cell.kind === 'missing') return true;
  if (cell.kind !== 'number') return false;
  const typed = (cell.numeral.point ?? cell.numeral.comma)?.value ?? 0;
  if (unit === null || typed === 0) return true;
  return isWithinLimits(toCanonical(cell.negative ? -typed : typed, cell.unit ?? unit), column.metric);
}
