import { at } from '../../stats/at.ts';
import type { MetricId } from '../../trade/metrics.ts';
import { toCanonical } from '../../trade/units.ts';
import type { Report } from './collector.ts';
import { settleUnits } from './columnUnits.ts';
import type { MarkDecision } from './decimalMark.ts';
import { joinColumns, judgeRoleColumns } from './duplicateColumns.ts';
import { judgeColumn, judgeRelations, type MetricValues } from './plausibility.ts';
import { findShiftedRows } from './shiftedRows.ts';
import type { Table } from './table.ts';
import { readTypedColumn } from './typedColumn.ts';

/** Every metric of a table in canonical units. */
export function readMetrics(table: Table, mark: MarkDecision, report: Report): readonly MetricValues[] {
  const typed = table.columns.metrics.map((column) => readTypedColumn(table, column, mark, report));
  const units = settleUnits(table, typed, report);
  const skip = new Set<number>();
  for (const { row, at: index, meant } of findShiftedRows(table, units)) {
    skip.add(row);
    const { line, cells, block } = at(table.rows, row);
    report('misaligned-row', {
      line,
      column: index + 1,
      columnName: block.headings[index]?.text ?? null,
      expected: `one number, perhaps ${meant}`,
      found: `${(cells[index] ?? '').trim()} and ${(cells[index + 1] ?? '').trim()} in two cells`,
      cure: 'export with quotes around numbers that hold a comma, or without thousands marks',
    });
  }
  const all: MetricValues[] = [];
  for (const [index, { column, values, cellUnits, step }] of typed.entries()) {
    const unit = units[index] ?? null;
    if (unit === null) continue;
    const inUnit = values.map((value, row) =>
      value === null ? null : toCanonical(value, cellUnits[row] ?? unit),
    );
    all.push(
      judgeColumn(table, { column, unit, step: toCanonical(step, unit), values: inUnit }, skip, report),
    );
  }
  judgeRoleColumns(table, report);
  const joined = joinColumns(table, all, report);
  judgeRelations(table, joined, skip, report);
  return totalsWithoutCarry(joined);
}

/** A total of zero beside a carry that was not measured is no reading either. */
function totalsWithoutCarry(all: readonly MetricValues[]): readonly MetricValues[] {
  const of = (metric: MetricId) => all.find(({ column }) => column.metric === metric);
  const carry = of('carry');
  if (carry === undefined || of('total') === undefined) return all;
  return all.map((each) =>
    each.column.metric !== 'total'
      ? each
      : {
          ...each,
          values: each.values.map((value, row) =>
            value === 0 && (carry.values[row] ?? null) === null ? null : value,
          ),
        },
  );
}
