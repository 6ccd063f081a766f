import { at } from '../../stats/at.ts';
import { isWithinLimits, longestCarry } from '../../trade/limits.ts';
import { metrics } from '../../trade/metrics.ts';
import { canonicalUnit, toCanonical, units, type UnitId } from '../../trade/units.ts';
import type { Report } from './collector.ts';
import { isRuledOut } from './decimalMark.ts';
import type { Table } from './table.ts';
import type { TypedColumn } from './typedColumn.ts';

type Units = readonly (UnitId | null)[];

const placeIn = (typed: TypedColumn, line: number) => ({
  line,
  column: typed.column.index + 1,
  columnName: typed.column.heading,
});

const unitList = (typed: TypedColumn): readonly UnitId[] =>
  Object.values(units)
    .filter(({ dimensions }) => dimensions.includes(metrics[typed.column.metric].dimension))
    .map(({ id }) => id);

const isSpeed = (typed: TypedColumn): boolean => metrics[typed.column.metric].dimension === 'speed';

const isLength = (typed: TypedColumn): boolean =>
  ['distance', 'height', 'offset'].includes(metrics[typed.column.metric].dimension);

/** The unit most cells of a column name behind their number. */
function commonest(cellUnits: readonly (UnitId | null)[]): UnitId | null {
  const counts = new Map<UnitId, number>();
  for (const unit of cellUnits) if (unit !== null) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  return [...counts].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}

function reportMixed(table: Table, typed: TypedColumn, unit: UnitId, report: Report): void {
  for (const [row, cellUnit] of typed.cellUnits.entries()) {
    if (cellUnit === null || cellUnit === unit) continue;
    const { line, cells } = at(table.rows, row);
    report('mixed-units-in-column', {
      ...placeIn(typed, line),
      expected: unit,
      found: (cells[typed.column.index] ?? '').trim(),
      cure: 'check this cell: its own unit was obeyed',
      forReader: `Some values of ${metrics[typed.column.metric].name} were recorded in another unit and converted.`,
    });
  }
}

/** The unit of a column as far as it is stated; `open` where it must be worked out from the numbers. */
function statedUnit(table: Table, typed: TypedColumn, report: Report): UnitId | 'open' | null {
  const { column, values, cellUnits } = typed;
  const { dimension, name } = metrics[column.metric];
  if (column.unit !== null) {
    reportMixed(table, typed, column.unit, report);
    return column.unit;
  }
  const inCells = commonest(cellUnits);
  if (inCells !== null) {
    reportMixed(table, typed, inCells, report);
    if (!isLength(typed) && !isSpeed(typed)) return inCells;
    for (const [row, value] of values.entries()) {
      if (value === null || value === 0 || cellUnits[row] !== null) continue;
      const { line, cells } = at(table.rows, row);
      report('unit-missing', {
        ...placeIn(typed, line),
        expected: 'a number with its unit, as in the other cells of this column',
        found: (cells[column.index] ?? '').trim(),
        cure: 'write the unit behind the number, or into the heading for all',
      });
    }
    return inCells;
  }
  if (values.every((value) => value === null || value === 0)) return canonicalUnit[dimension];
  if (isSpeed(typed)) return 'open';
  if (!isLength(typed)) return canonicalUnit[dimension];
  report('unit-missing', {
    ...placeIn(typed, column.headingLine),
    expected: `${name} with a unit: ${unitList(typed).join(', ')}`,
    found: column.heading,
    cure: `write the unit into the heading, for instance "${column.heading} (${unitList(typed)[1] ?? 'm'})", or state it in the report under "columns"`,
  });
  return null;
}

const inUnit = (typed: TypedColumn, unit: UnitId): readonly (number | null)[] =>
  typed.values.map((value, row) =>
    value === null ? null : toCanonical(value, typed.cellUnits[row] ?? unit),
  );

/** Whether a set of readings leaves more than the odd row impossible. */
function contradicts(all: readonly TypedColumn[], readings: Units): boolean {
  const valuesOf = all.map((typed, index) => {
    const unit = readings[index] ?? null;
    return unit === null ? null : inUnit(typed, unit);
  });
  const against = (test: (row: number) => boolean | null): boolean => {
    let impossible = 0;
    let judged = 0;
    for (let row = 0; row < (all[0]?.values.length ?? 0); row += 1) {
      const fits = test(row);
      if (fits !== null) judged += 1;
      if (fits === false) impossible += 1;
    }
    return isRuledOut(impossible, judged);
  };
  return all.some((typed, index) => {
    const mine = valuesOf[index];
    if (mine === null || mine === undefined || !isSpeed(typed)) return false;
    const { metric } = typed.column;
    const beyond = against((row) => {
      const value = mine[row] ?? null;
      return value === null ? null : isWithinLimits(value, metric);
    });
    if (beyond) return true;
    return (
      metric === 'ball_speed' &&
      all.some((other, at) => {
        const theirs = valuesOf[at];
        if (theirs === null || theirs === undefined) return false;
        return against((row) => {
          const [ball, value] = [mine[row] ?? null, theirs[row] ?? null];
          if (ball === null || value === null) return null;
          if (other.column.metric === 'carry') return value <= longestCarry(ball);
          if (other.column.metric !== 'club_speed') return null;
          return isWithinLimits(ball / value, 'smash');
        });
      })
    );
  });
}

/** All ways to give each open column one of the units of speed. */
function combinations(
  open: readonly number[],
  choices: readonly UnitId[],
): readonly ReadonlyMap<number, UnitId>[] {
  const [first, ...others] = open;
  if (first === undefined) return [new Map()];
  return combinations(others, choices).flatMap((rest) =>
    choices.map((unit) => new Map([...rest, [first, unit]])),
  );
}

function inferSpeeds(
  all: readonly TypedColumn[],
  stated: readonly (UnitId | 'open' | null)[],
  report: Report,
): Units {
  const open = stated.flatMap((unit, index) => (unit === 'open' ? [index] : []));
  const known = stated.map((unit) => (unit === 'open' ? null : unit));
  const surviving = combinations(open.slice(0, 4), ['mph', 'km/h', 'm/s']).filter(
    (choice) =>
      !contradicts(
        all,
        known.map((unit, index) => choice.get(index) ?? unit),
      ),
  );
  return known.map((unit, index) => {
    const typed = all[index];
    if (!open.includes(index) || typed === undefined) return unit;
    const left = [...new Set(surviving.flatMap((choice) => choice.get(index) ?? []))];
    const [only] = left;
    const { heading, headingLine, metric } = typed.column;
    const { name } = metrics[metric];
    if (only !== undefined && left.length === 1) {
      report('unit-inferred', {
        ...placeIn(typed, headingLine),
        expected: `${name} with a unit: mph, km/h or m/s`,
        found: heading,
        cure: `check that it is ${only}: every other unit is physically impossible here`,
        forReader: `The file does not name the unit of ${name}; ${only} is the only one that fits the numbers.`,
      });
      return only;
    }
    report('unit-ambiguous', {
      ...placeIn(typed, headingLine),
      expected: `${name} with a unit: mph, km/h or m/s`,
      found:
        left.length === 0
          ? `${heading}, and no unit fits the numbers`
          : `${heading}, which could be ${left.join(' or ')}`,
      cure: `write the unit into the heading, for instance "${heading} (mph)", or state it in the report under "columns"`,
    });
    return null;
  });
}

/** The unit of each column of a table; null where it cannot be told, which is reported. */
export function settleUnits(table: Table, all: readonly TypedColumn[], report: Report): Units {
  const stated = all.map((typed) => statedUnit(table, typed, report));
  return inferSpeeds(all, stated, report);
}
