import type { ColumnRole } from '../../trade/columnRoles.ts';
import { isMissingMark } from './cell.ts';
import type { Report } from './collector.ts';
import { fewestAbove, judgeNumber, judgeText } from './lastCell.ts';
import type { CsvRecord } from './records.ts';
import type { Table } from './table.ts';

const told: readonly ColumnRole[] = ['club', 'hitter', 'shot', 'round', 'time'];

/**
 * Looks at the last cell of a file that stops without a line end: a transfer that broke off inside a number leaves
 * another number there, and nothing else tells of it.
 *
 * @param last the last record of the file
 */
export function reportCutCell(tables: readonly Table[], last: CsvRecord | undefined, report: Report): void {
  const table = tables.find(({ rows }) => rows.at(-1)?.line === last?.line);
  const row = table?.rows.at(-1);
  if (table === undefined || row === undefined) return;
  const others = table.rows.slice(0, -1);
  const index = row.cells.length - 1;
  const cell = (row.cells[index] ?? '').trim();
  const above = others.map(({ cells }) => (cells[index] ?? '').trim());
  const isNumber = table.columns.metrics.some((column) => column.index === index);
  const isTold = told.some((role) => table.columns.roles.get(role)?.includes(index) === true);
  const verdict = isNumber ? judgeNumber(cell, above) : isTold ? judgeText(cell, above) : 'whole';
  const fewerCells =
    others.length >= fewestAbove && others.every(({ cells }) => cells.length > row.cells.length);
  if (verdict === 'whole' && !fewerCells) return;
  const place = { line: row.line, column: index + 1, columnName: row.block.headings[index]?.text ?? null };
  const example = above.findLast((each) => !isMissingMark(each)) ?? '';
  const found = cell === '' ? 'an empty cell, then the file stops' : `${cell}, then the file stops`;
  if (verdict === 'cut') {
    report('truncated-row', {
      ...place,
      expected: `a whole cell, as those above it (${example}), and a line end`,
      found,
      cure: 'export the session again: digits of this shot are missing, and more shots may be',
    });
    return;
  }
  report('last-cell-short', {
    ...place,
    expected: fewerCells
      ? 'as many cells as in the rows above, and a line end'
      : `a last cell as long as those above it (${example}), and a line end`,
    found,
    cure: 'compare this cell with the device; if something is missing, export the session again. If it is whole, end the line with Enter',
    forReader: 'The session file stops without a line end in its last row, which may lack a digit.',
  });
}
