import type { Report } from './collector.ts';
import type { Table } from './table.ts';

/** Rows, by table and position, that repeat an earlier row in every cell, shot number or time included. */
export function findRepeatedRows(tables: readonly Table[], report: Report): ReadonlySet<string> {
  const seen = new Map<string, number>();
  const repeated = new Set<string>();
  for (const [at, table] of tables.entries()) {
    const names = ['shot', 'time'] as const;
    const telling = names.flatMap((role) => table.columns.roles.get(role) ?? []);
    if (telling.length === 0) continue;
    for (const [row, { cells, line, block }] of table.rows.entries()) {
      if (telling.every((index) => (cells[index] ?? '').trim() === '')) continue;
      const own = cells.slice(0, table.width).map((cell) => cell.trim());
      const key = JSON.stringify([at, block.club, block.hitter, own]);
      const earlier = seen.get(key);
      if (earlier === undefined) {
        seen.set(key, line);
        continue;
      }
      repeated.add(`${at} ${row}`);
      report(
        'duplicate-shots-removed',
        { line },
        {
          expected: 'each shot once',
          found: `the same as line ${earlier} in every cell`,
          cure: 'nothing need be done: the shot is counted once',
          forReader: `A row that repeats the one in line ${earlier} was counted once.`,
        },
      );
    }
  }
  return repeated;
}
