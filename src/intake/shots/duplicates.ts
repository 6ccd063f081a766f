import type { Report } from './collector.ts';
import type { Table, TableRow } from './table.ts';

/** Whether two rows say the same in every cell, club and hitter named above them included. */
function sameRow(a: TableRow, b: TableRow, width: number): boolean {
  if (a.block.club !== b.block.club || a.block.hitter !== b.block.hitter) return false;
  for (let index = 0; index < width; index += 1) {
    if ((a.cells[index] ?? '').trim() !== (b.cells[index] ?? '').trim()) return false;
  }
  return true;
}

/** Rows of a table, by position, that repeat an earlier row in every cell, shot number or time included, and its line. */
export function findRepeatedRows(table: Table, report: Report): ReadonlyMap<number, number> {
  const repeated = new Map<number, number>();
  const telling = (['shot', 'time'] as const).flatMap((role) => table.columns.roles.get(role) ?? []);
  if (telling.length === 0) return repeated;
  const seen = new Map<string, number[]>();
  for (const [at, row] of table.rows.entries()) {
    const key = table.columns.metrics
      .map(({ index }) => index)
      .concat(telling)
      .map((index) => (row.cells[index] ?? '').trim())
      .join('\u0001');
    if (telling.every((index) => (row.cells[index] ?? '').trim() === '')) continue;
    const alike = seen.get(key);
    if (alike === undefined) {
      seen.set(key, [at]);
      continue;
    }
    const earlier = alike
      .map((index) => table.rows[index])
      .find((other) => other !== undefined && sameRow(other, row, table.width));
    if (earlier === undefined) {
      alike.push(at);
      continue;
    }
    repeated.set(at, earlier.line);
    report('duplicate-shots-removed', {
      line: row.line,
      expected: 'each shot once',
      found: `the same as line ${earlier.line} in every cell`,
      cure: 'nothing need be done: the shot is counted once',
      forReader: `Line ${row.line} of the file repeats line ${earlier.line} and is counted once.`,
    });
  }
  return repeated;
}
