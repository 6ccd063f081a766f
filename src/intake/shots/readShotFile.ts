import { makeProblem } from '../../problems/makeProblem.ts';
import type { Problem } from '../../problems/problem.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { canonicalUnit, toCanonical } from '../../trade/units.ts';
import { readCell } from './cell.ts';
import { readHeading, type Heading } from './heading.ts';
import { readRecords } from './records.ts';
import type { ShotColumn, ShotFile, ShotFileOptions, ShotRow } from './shotFile.ts';

/** Reads one CSV of shots. Never throws: what cannot be read is a problem with its place. */
export function readShotFile(file: string, bytes: Uint8Array, _options: ShotFileOptions = {}): ShotFile {
  const problems: Problem[] = [];
  const text = new TextDecoder().decode(bytes);
  const [header, ...records] = readRecords(text, ',').records;
  const headings: Heading[] = (header?.cells ?? []).map(readHeading);
  const columns: Partial<Record<MetricId, ShotColumn>> = {};
  for (const [index, heading] of headings.entries()) {
    if (heading.meaning.kind !== 'metric') continue;
    const metric = metrics[heading.meaning.metric];
    const usual = ['angle', 'spin', 'ratio', 'time'].includes(metric.dimension)
      ? canonicalUnit[metric.dimension]
      : null;
    const unit = heading.unit ?? usual;
    if (unit === null) {
      problems.push(
        makeProblem(
          'unit-missing',
          { file, line: 1, column: index + 1, columnName: heading.text },
          {
            expected: 'a unit in the heading',
            found: heading.text,
            cure: 'write the unit behind the name',
          },
        ),
      );
      continue;
    }
    columns[metric.id] = {
      metric: metric.id,
      heading: heading.text,
      column: index + 1,
      unit,
      step: toCanonical(0.1, unit),
      class: heading.class ?? metric.usualClass,
    };
  }
  const rows: ShotRow[] = [];
  for (const { cells, line } of records) {
    if (cells.every((cell) => cell.trim() === '')) continue;
    const values: Partial<Record<MetricId, number | null>> = {};
    for (const column of Object.values(columns)) {
      const typed = cells[column.column - 1] ?? '';
      const cell = readCell(typed);
      if (cell.kind === 'number' && cell.numeral.point !== null) {
        values[column.metric] = toCanonical((cell.negative ? -1 : 1) * cell.numeral.point.value, column.unit);
        continue;
      }
      values[column.metric] = null;
      if (cell.kind !== 'missing') {
        problems.push(
          makeProblem(
            'not-a-number',
            { file, line, column: column.column, columnName: column.heading },
            {
              expected: 'a number',
              found: typed,
              cure: 'correct that cell',
            },
          ),
        );
      }
    }
    const roleCell = (role: string): string | null => {
      const index = headings.findIndex(({ meaning }) => meaning.kind === 'role' && meaning.role === role);
      const typed = index < 0 ? '' : (cells[index] ?? '').trim();
      return typed === '' ? null : typed;
    };
    const number = (typed: string | null): number | null =>
      typed === null || !/^\d+$/.test(typed) ? null : Number(typed);
    rows.push({
      club: roleCell('club'),
      hitter: roleCell('hitter'),
      shotNo: number(roleCell('shot')),
      round: number(roleCell('round')),
      time: roleCell('time'),
      note: roleCell('note'),
      excluded: false,
      warmUp: false,
      values,
      line,
    });
  }
  return { file, rows, columns, problems };
}
