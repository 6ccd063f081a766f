import { limits } from '../../trade/limits.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { toCanonical, units, type UnitId } from '../../trade/units.ts';
import { readCell, type NumberCell } from './cell.ts';
import type { Report } from './collector.ts';
import type { MetricColumn } from './columns.ts';
import { chooseReading, isPossible, type MarkDecision } from './decimalMark.ts';
import type { PositiveSide } from './shotFile.ts';
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

/** Zero in these means that nothing was measured. */
const neverZero: ReadonlySet<MetricId> = new Set(['ball_speed', 'club_speed', 'spin_rate', 'carry', 'smash']);

/** -999, -9999.9 and the like: what devices write for "no reading". */
const nines = /^9{3,}(?:9*\.[09]+)?$/;

function isSentinel(cell: NumberCell, value: number, metric: MetricId, unit: UnitId | null): boolean {
  const magnitude = String(Math.abs(value));
  return nines.test(magnitude) && (cell.negative || magnitude.length > 3) && !isPossible(value, metric, unit);
}

/** Plus or minus one for a letter behind a number; null where this metric has no such side. */
function sideSign(side: PositiveSide, metric: MetricId): number | null {
  switch (metrics[metric].positive) {
    case 'right of the target line':
      return side === 'right' ? 1 : side === 'left' ? -1 : null;
    case 'towards the toe':
      return side === 'toe' ? 1 : side === 'heel' ? -1 : null;
    case 'up':
      return side === 'up' ? 1 : side === 'down' ? -1 : null;
    case 'down':
      return side === 'down' ? 1 : side === 'up' ? -1 : null;
    case null:
      return null;
  }
}

/** Reads the cells of one column; whatever is no number is reported where it stands. */
export function readTypedColumn(
  table: Table,
  column: MetricColumn,
  mark: MarkDecision,
  report: Report,
): TypedColumn {
  const { metric, index, heading } = column;
  const [low] = limits[metric];
  const values: (number | null)[] = [];
  const cellUnits: (UnitId | null)[] = [];
  const sideless: { line: number; text: string }[] = [];
  const seen = { letters: 0, signs: 0, zeros: 0, sentinels: 0, odd: 0 };
  const firsts: Partial<Record<'zeros' | 'sentinels' | 'odd', { line: number; text: string }>> = {};
  const count = (what: 'zeros' | 'sentinels' | 'odd', line: number, text: string): void => {
    seen[what] += 1;
    firsts[what] ??= { line, text };
  };
  let step = Number.POSITIVE_INFINITY;

  for (const { cells, line } of table.rows) {
    const typed = cells[index] ?? '';
    const cell = readCell(typed);
    const text = typed.trim();
    let value: number | null = null;
    let cellUnit: UnitId | null = null;
    const place = { line, column: index + 1, columnName: heading };
    if (cell.kind === 'not-a-number') {
      const nul = text.includes('\0');
      report(nul ? 'nul-byte' : 'not-a-number', place, {
        expected: 'a number, or nothing where there was no reading',
        found: nul ? text.replaceAll('\0', '␀') : text.slice(0, 80),
        cure: nul
          ? 'export the session again: the file is damaged here'
          : 'correct that cell from the device, or empty it',
      });
    } else if (cell.kind === 'sign-and-letter') {
      report('contradictory-sign', place, {
        expected: 'a sign or a letter for the side, not both',
        found: text,
        cure: 'keep the letter or the sign, whichever is right',
      });
    } else if (cell.kind === 'number') {
      const unit = cell.unit ?? column.unit;
      const sign = cell.negative ? -1 : 1;
      const reading = chooseReading(cell.numeral, mark, (each) => isPossible(sign * each, metric, unit));
      const side = cell.side === null ? null : sideSign(cell.side, metric);
      if (cell.unit !== null && !units[cell.unit].dimensions.includes(metrics[metric].dimension)) {
        report('unit-contradiction', place, {
          expected: `a unit of ${metrics[metric].name}`,
          found: text,
          cure: 'correct the unit behind that number',
        });
      } else if (cell.side !== null && side === null) {
        report('not-a-number', place, {
          expected: 'a number',
          found: text,
          cure: `take the letter away: ${metrics[metric].name} has no such side`,
        });
      } else if (reading === null) {
        report('decimal-mark-ambiguous', place, {
          expected: 'a number that can be read in one way',
          found: text,
          cure: 'write it without a thousands mark',
        });
      } else if (isSentinel(cell, sign * reading.value, metric, unit)) count('sentinels', line, text);
      else if (reading.value === 0 && neverZero.has(metric)) count('zeros', line, text);
      else {
        const turn = side ?? (column.turned ? -sign : sign);
        value = reading.value === 0 ? 0 : turn * reading.value;
        cellUnit = cell.unit;
        step = Math.min(step, reading.step);
        if (cell.oddNegative) count('odd', line, text);
        if (cell.side !== null) seen.letters += 1;
        if (cell.signed) seen.signs += 1;
        if (cell.side === null && !cell.signed && value !== 0 && low < 0 && sideless.length < 50)
          sideless.push({ line, text });
      }
    }
    values.push(value);
    cellUnits.push(cellUnit);
  }

  const summed = (what: 'zeros' | 'sentinels' | 'odd') => ({
    place: { line: firsts[what]?.line ?? null, column: index + 1, columnName: heading },
    cells: `${seen[what]} ${seen[what] === 1 ? 'cell' : 'cells'}`,
    shots: `${seen[what]} ${seen[what] === 1 ? 'shot' : 'shots'}`,
    found: firsts[what]?.text ?? null,
  });
  const { name } = metrics[metric];
  if (seen.zeros > 0) {
    const { place, cells, shots, found } = summed('zeros');
    report('zero-as-missing', place, {
      expected: `${name} above zero`,
      found,
      cure: `nothing need be done if the device writes 0 for "no reading": ${cells} read as not measured`,
      forReader: `The monitor gave no ${name} for ${shots}.`,
    });
  }
  if (seen.sentinels > 0) {
    const { place, cells, shots, found } = summed('sentinels');
    report('sentinel-as-missing', place, {
      expected: `${name}, or an empty cell where there was no reading`,
      found,
      cure: `nothing need be done if the device writes this for "no reading": ${cells} read as not measured`,
      forReader: `The monitor gave no ${name} for ${shots}.`,
    });
  }
  if (seen.odd > 0) {
    const { place, cells, found } = summed('odd');
    report('negative-spelling', place, {
      expected: 'negative numbers with a minus in front, such as -4.2',
      found,
      cure: `check the sign: ${cells} in this column read as negative`,
    });
  }
  if (seen.letters > 0 && seen.signs === 0) {
    for (const { line, text } of sideless) {
      report(
        'direction-missing',
        { line, column: index + 1, columnName: heading },
        {
          expected: 'a letter for the side, as in the other cells of this column',
          found: text,
          cure: 'add the letter',
        },
      );
    }
  }
  return { column, values, cellUnits, step: Number.isFinite(step) ? step : 1 };
}

/** A typed number in canonical units. */
export const canonical = (value: number, unit: UnitId): number => toCanonical(value, unit);
