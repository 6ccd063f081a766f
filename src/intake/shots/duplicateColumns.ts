import { at } from '../../stats/at.ts';
import { metrics } from '../../trade/metrics.ts';
import type { ColumnRole } from '../../trade/columnRoles.ts';
import type { Report } from './collector.ts';
import { nameText } from './names.ts';
import type { MetricValues } from './plausibility.ts';
import type { Table } from './table.ts';

const readings = (values: readonly (number | null)[]): number =>
  values.filter((value) => value !== null).length;

/**
 * Joins columns of one meaning. Two that agree wherever both have a reading, to within the steps they are written in,
 * are one; two that differ are refused.
 */
export function joinColumns(
  table: Table,
  all: readonly MetricValues[],
  report: Report,
): readonly MetricValues[] {
  const joined = new Map<string, MetricValues>();
  for (const next of all) {
    const { metric, index, heading, headingLine } = next.column;
    const known = joined.get(metric);
    if (known === undefined) {
      joined.set(metric, next);
      continue;
    }
    const slack = 0.51 * (known.step + next.step);
    const row = next.values.findIndex((value, at) => {
      const other = known.values[at] ?? null;
      return (
        value !== null &&
        other !== null &&
        Math.abs(value - other) > (known.unit === next.unit ? 1e-9 : slack)
      );
    });
    if (row >= 0) {
      const { cells, line } = at(table.rows, row);
      report('duplicate-column', {
        line: headingLine,
        column: index + 1,
        columnName: heading,
        expected: `one column for ${metrics[metric].name}`,
        found: `columns ${known.column.index + 1} and ${index + 1}; in line ${line} they say ${(cells[known.column.index] ?? '').trim()} and ${(cells[index] ?? '').trim()}`,
        cure: 'rename or delete one of the two, or tell in the report under "columns" which one counts',
      });
      continue;
    }
    const main = readings(next.values) > readings(known.values) ? next : known;
    const other = main === next ? known : next;
    joined.set(metric, {
      ...main,
      values: main.values.map((value, at) => value ?? other.values[at] ?? null),
    });
  }
  return [...joined.values()];
}

/**
 * Refuses two columns for the club or the hitter that do not say the same. Numbers may stand twice: a row number beside
 * a shot number is common.
 */
export function judgeRoleColumns(table: Table, report: Report): void {
  for (const role of ['club', 'hitter'] as const satisfies readonly ColumnRole[]) {
    const [first, ...others] = table.columns.roles.get(role) ?? [];
    if (first === undefined) continue;
    for (const index of others) {
      const differing = table.rows.find(
        ({ cells }) => nameText(cells[first] ?? '') !== nameText(cells[index] ?? ''),
      );
      if (differing === undefined) continue;
      const columnName = differing.block.headings[index]?.text ?? null;
      report('duplicate-column', {
        line: table.headingLine,
        column: index + 1,
        columnName,
        expected: `one column for the ${role}`,
        found: `columns ${first + 1} and ${index + 1}; in line ${differing.line} they say "${nameText(differing.cells[first] ?? '')}" and "${nameText(differing.cells[index] ?? '')}"`,
        cure: 'rename or delete one of the two',
      });
    }
  }
}
