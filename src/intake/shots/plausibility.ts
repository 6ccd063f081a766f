import { furthestRollBack, isWithinLimits, longestCarry } from '../../trade/limits.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { fromCanonical, type UnitId } from '../../trade/units.ts';
import type { Report } from './collector.ts';
import { isRuledOut } from './decimalMark.ts';
import { leaveOutMisread } from './leaveOutMisread.ts';
import type { Table } from './table.ts';
import type { MetricColumn } from './columns.ts';

/** One column in canonical units, one entry a row of the table. */
export interface MetricValues {
  readonly column: MetricColumn;
  readonly unit: UnitId;
  readonly step: number;
  readonly values: readonly (number | null)[];
}

const typedCell = (table: Table, row: number, column: MetricColumn): string =>
  (table.rows[row]?.cells[column.index] ?? '').trim().slice(0, 80);

const placeAt = (table: Table, row: number, { index, heading, headingLine }: MetricColumn) => ({
  line: table.rows[row]?.line ?? headingLine,
  column: index + 1,
  columnName: heading,
});

const rounded = (value: number): string => String(Number(value.toPrecision(3)));

function rangeText(metric: MetricId, unit: UnitId): string {
  const [low, high] = metrics[metric].limits;
  const { name } = metrics[metric];
  const written = unit === '1' ? '' : ` ${unit}`;
  return `${name} between ${rounded(fromCanonical(low, unit))} and ${rounded(fromCanonical(high, unit))}${written}`;
}

/**
 * Checks one column against its limits. A column that is beyond them as a whole, and fits when taken in thousands,
 * is read so; any other is a question of unit or format. Single cells beyond are refused.
 */
export function judgeColumn(
  table: Table,
  column: MetricValues,
  skip: ReadonlySet<number>,
  report: Report,
): MetricValues {
  const { metric } = column.column;
  const judged: number[] = [];
  const beyond: number[] = [];
  for (const [row, value] of column.values.entries()) {
    if (value === null || skip.has(row)) continue;
    judged.push(row);
    if (!isWithinLimits(value, metric)) beyond.push(row);
  }
  const [first] = beyond;
  if (first === undefined) return column;
  const whole = beyond.length === judged.length && judged.length > 1;
  const inThousands = column.values.map((value) => (value === null ? null : 1000 * value));
  if (whole && judged.every((row) => isWithinLimits(inThousands[row] ?? 0, metric))) {
    report('column-scale-inferred', {
      ...placeAt(table, first, column.column),
      expected: rangeText(metric, column.unit),
      found: typedCell(table, first, column.column),
      cure: 'check that this column is written in thousands; it was multiplied by 1000',
      forReader: `The file gives ${metrics[metric].name} in thousands.`,
    });
    return { ...column, values: inThousands, step: 1000 * column.step };
  }
  const found = (row: number): string => typedCell(table, row, column.column);
  if (2 * beyond.length >= judged.length && judged.length > 1) {
    report('unit-contradiction', {
      ...placeAt(table, first, column.column),
      expected: rangeText(metric, column.unit),
      found: `${found(first)}${beyond.length > 1 ? `, and ${beyond.length - 1} more like it` : ''}`,
      cure: 'correct the unit in the heading; a stated unit is never overridden by a guess',
    });
    return column;
  }
  for (const row of beyond) {
    report('implausible-value', {
      ...placeAt(table, row, column.column),
      expected: rangeText(metric, column.unit),
      found: found(row),
      ...leaveOutMisread,
    });
  }
  return column;
}

interface Relation {
  readonly a: MetricId;
  readonly b: MetricId;
  readonly fits: (a: number, b: number) => boolean;
  readonly says: string;
}

const relations: readonly Relation[] = [
  {
    a: 'ball_speed',
    b: 'club_speed',
    fits: (ball, club) => isWithinLimits(ball / club, 'smash'),
    says: `ball speed ${metrics.smash.limits.join(' to ')} times club speed`,
  },
  {
    a: 'carry',
    b: 'ball_speed',
    fits: (carry, ball) => carry <= longestCarry(ball),
    says: 'a carry that the ball speed can reach',
  },
  {
    a: 'total',
    b: 'carry',
    fits: (total, carry) => total >= carry - furthestRollBack,
    says: `a total not more than ${furthestRollBack} m below the carry`,
  },
];

function medianOf(values: readonly (number | null)[]): number {
  const sorted = values.filter((value) => value !== null).toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/** How far a value is from the middle of its column, as a factor. */
const strangeness = (value: number, median: number): number =>
  Math.abs(Math.log(Math.max(Math.abs(value), 1e-9) / Math.max(Math.abs(median), 1e-9)));

/** Checks columns against each other: what cannot be together is a unit question, or one slip of typing. */
export function judgeRelations(
  table: Table,
  all: readonly MetricValues[],
  skip: ReadonlySet<number>,
  report: Report,
): void {
  const usable = ({ column, values }: MetricValues, row: number): number | null => {
    const value = values[row] ?? null;
    return value !== null && isWithinLimits(value, column.metric) ? value : null;
  };
  for (const { a, b, fits, says } of relations) {
    const first = all.find(({ column }) => column.metric === a);
    const second = all.find(({ column }) => column.metric === b);
    if (first === undefined || second === undefined) continue;
    const failing: number[] = [];
    let judged = 0;
    for (let row = 0; row < table.rows.length; row += 1) {
      const [x, y] = [usable(first, row), usable(second, row)];
      if (x === null || y === null || skip.has(row)) continue;
      judged += 1;
      if (!fits(x, y)) failing.push(row);
    }
    const found = (row: number): string =>
      `${typedCell(table, row, first.column)} beside ${typedCell(table, row, second.column)} in ${second.column.heading}`;
    const [row] = failing;
    if (row !== undefined && isRuledOut(failing.length, judged) && 2 * failing.length >= judged) {
      for (const { column } of [first, second]) {
        report('unit-contradiction', {
          ...placeAt(table, row, column),
          expected: says,
          found: found(row),
          cure: 'correct the unit in the heading of one of the two columns',
        });
      }
      continue;
    }
    const medians = [medianOf(first.values), medianOf(second.values)] as const;
    for (const each of failing) {
      const [x, y] = [first.values[each] ?? 0, second.values[each] ?? 0];
      const blamed = strangeness(x, medians[0]) >= strangeness(y, medians[1]) ? first : second;
      const other = blamed === first ? second : first;
      report('implausible-value', {
        ...placeAt(table, each, blamed.column),
        expected: says,
        found: `${typedCell(table, each, blamed.column)} beside ${typedCell(table, each, other.column)} in ${other.column.heading}`,
        ...leaveOutMisread,
      });
    }
  }
}
