import { metrics } from '../../trade/metrics.ts';
import type { UnitId } from '../../trade/units.ts';
import { readCell, sides } from './cell.ts';
import type { Report } from './collector.ts';
import type { MetricColumn } from './columns.ts';
import type { MarkDecision } from './decimalMark.ts';
import { settleCell } from './settleCell.ts';
import type { Table } from './table.ts';

/** The numbers of one column as typed, signs settled, before units. One entry a row of the table. */
export interface TypedColumn {
  readonly column: MetricColumn;
  readonly values: readonly (number | null)[];
  /** The unit behind a number in its own cell; null where the cell names none. */
  readonly cellUnits: readonly (UnitId | null)[];
  /** Step of the finest number. */
  readonly step: number;
}

/** Cells of one sort, counted, with the first of them. */
interface Count {
  cells: number;
  line: number | null;
  found: string | null;
}

const none = (): Count => ({ cells: 0, line: null, found: null });

function count(sort: Count, line: number, found: string): void {
  sort.cells += 1;
  sort.line ??= line;
  sort.found ??= found;
}

const plural = (number: number, noun: string): string => `${number} ${noun}${number === 1 ? '' : 's'}`;

/** Reads the cells of one column; whatever is no number is reported where it stands. */
export function readTypedColumn(
  table: Table,
  column: MetricColumn,
  mark: MarkDecision,
  report: Report,
): TypedColumn {
  const { metric, index, heading } = column;
  const [letters] = metric === 'side' ? (table.columns.roles.get('side-letter') ?? []) : [];
  const values: (number | null)[] = [];
  const cellUnits: (UnitId | null)[] = [];
  const sideless: { readonly line: number; readonly text: string }[] = [];
  const sorts = { zero: none(), sentinel: none(), oddNegative: none() };
  let lettered = 0;
  let signed = 0;
  let step = Number.POSITIVE_INFINITY;

  for (const { cells, line } of table.rows) {
    const typed = cells[index] ?? '';
    const letter =
      letters === undefined ? null : (sides[(cells[letters] ?? '').trim().toLowerCase()] ?? null);
    const settled = settleCell(readCell(typed), typed.trim(), column, mark, letter);
    let value: number | null = null;
    let cellUnit: UnitId | null = null;
    if (settled.kind === 'wrong') {
      report(settled.problem, {
        line,
        column: index + 1,
        columnName: heading,
        ...settled.words,
      });
    } else if (settled.kind === 'zero' || settled.kind === 'sentinel')
      count(sorts[settled.kind], line, typed.trim());
    else if (settled.kind === 'value') {
      const { cell } = settled;
      value = settled.value;
      cellUnit = cell.unit;
      step = Math.min(step, settled.step);
      if (cell.oddNegative) count(sorts.oddNegative, line, typed.trim());
      if (cell.side !== null || letter !== null) lettered += 1;
      else if (cell.signed) signed += 1;
      else if (value !== 0) sideless.push({ line, text: typed.trim() });
    }
    values.push(value);
    cellUnits.push(cellUnit);
  }

  reportSorts(column, sorts, report);
  if (lettered > 0 && signed === 0 && metrics[metric].limits[0] < 0) {
    for (const { line, text } of sideless) {
      report('direction-missing', {
        line,
        column: index + 1,
        columnName: heading,
        expected: 'a letter for the side, as in the other cells of this column',
        found: text,
        cure: 'add the letter',
      });
    }
  }
  return { column, values, cellUnits, step: Number.isFinite(step) ? step : 1 };
}

function reportSorts(
  { metric, index, heading }: MetricColumn,
  { zero, sentinel, oddNegative }: Readonly<Record<'zero' | 'sentinel' | 'oddNegative', Count>>,
  report: Report,
): void {
  const { name } = metrics[metric];
  const placeOf = ({ line }: Count) => ({ line, column: index + 1, columnName: heading });
  if (zero.cells > 0) {
    report('zero-as-missing', {
      ...placeOf(zero),
      expected: `${name} above zero`,
      found: zero.found,
      cure: `nothing need be done if the device writes 0 for "no reading": ${plural(zero.cells, 'cell')} read as not measured`,
      forReader: `A ${name} of 0 was read as not measured (${plural(zero.cells, 'shot')}).`,
    });
  }
  if (sentinel.cells > 0) {
    report('sentinel-as-missing', {
      ...placeOf(sentinel),
      expected: `${name}, or an empty cell where there was no reading`,
      found: sentinel.found,
      cure: `nothing need be done if the device writes this for "no reading": ${plural(sentinel.cells, 'cell')} read as not measured`,
      forReader: `A ${name} of ${sentinel.found ?? ''} was read as not measured (${plural(sentinel.cells, 'shot')}).`,
    });
  }
  if (oddNegative.cells > 0) {
    report('negative-spelling', {
      ...placeOf(oddNegative),
      expected: 'negative numbers with a minus in front, such as -4.2',
      found: oddNegative.found,
      cure: `check the sign: ${plural(oddNegative.cells, 'cell')} in this column read as negative`,
    });
  }
}
