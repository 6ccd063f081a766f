import type { ColumnRole } from '../../trade/columnRoles.ts';
import { isMissingMark } from './cell.ts';
import type { Report } from './collector.ts';
import type { CsvRecord } from './records.ts';
import type { Table } from './table.ts';

/** What can be told of a last cell beside those above it. */
export type LastCell = 'whole' | 'perhaps-cut' | 'cut';

/** How a number is written: digits before its last mark, digits behind it, whether the mark ends it, its size. */
interface Written {
  readonly whole: number;
  readonly decimals: number;
  readonly endsInMark: boolean;
  readonly size: number;
}

function writtenAs(cell: string): Written | null {
  const numeral = /\d[\d.,]*/.exec(cell)?.[0];
  if (numeral === undefined) return null;
  const at = Math.max(numeral.lastIndexOf('.'), numeral.lastIndexOf(','));
  const [before, behind] = at < 0 ? [numeral, ''] : [numeral.slice(0, at), numeral.slice(at + 1)];
  const whole = before.replace(/\D/g, '');
  return {
    whole: whole.length,
    decimals: behind.length,
    endsInMark: at >= 0 && behind === '',
    size: Number(`${whole}.${behind}`),
  };
}

const least = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.min(a, b));

/** Fewer cells above tell no habit. */
const fewestAbove = 3;

/**
 * Judges the number in the last cell of a file without a line end by how all numbers above it are written. An export
 * that is whole writes it as it wrote them, but for a rare reading of fewer digits or a zero left out at its end.
 */
export function judgeNumber(last: string, above: readonly string[]): LastCell {
  const filled = above.filter((cell) => !isMissingMark(cell));
  if (filled.length < fewestAbove) return 'whole';
  if (isMissingMark(last)) return filled.length === above.length ? 'perhaps-cut' : 'whole';
  const cell = writtenAs(last);
  const others = filled.map(writtenAs).filter((each) => each !== null);
  if (cell === null || others.length < filled.length) return 'whole';
  const fewerDecimals = cell.decimals < least(others.map(({ decimals }) => decimals));
  const fewerDigits = cell.whole < least(others.map(({ whole }) => whole));
  const neverWhole = least(others.map(({ decimals }) => decimals)) > 0;
  if (
    fewerDigits &&
    (fewerDecimals || (!neverWhole && 2 * cell.size < least(others.map(({ size }) => size))))
  )
    return 'cut';
  const oddMark = cell.endsInMark && !others.some(({ endsInMark }) => endsInMark);
  return fewerDecimals || oddMark || (fewerDigits && !neverWhole) ? 'perhaps-cut' : 'whole';
}

/** Judges a name, a time or a count in the last cell: part of one above, or shorter than all of them. */
export function judgeText(last: string, above: readonly string[]): LastCell {
  const filled = above.filter((cell) => !isMissingMark(cell));
  if (filled.length < fewestAbove || filled.includes(last)) return 'whole';
  if (isMissingMark(last)) return filled.length === above.length ? 'perhaps-cut' : 'whole';
  const shorter = /\d$/.test(last) && last.length < least(filled.map(({ length }) => length));
  return shorter || filled.some((cell) => cell.startsWith(last)) ? 'perhaps-cut' : 'whole';
}

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
    report('truncated-row', place, {
      expected: `a whole cell, as those above it (${example}), and a line end`,
      found,
      cure: 'export the session again: digits of this shot are missing, and more shots may be',
    });
    return;
  }
  report('last-cell-short', place, {
    expected: fewerCells
      ? 'as many cells as in the rows above, and a line end'
      : `a last cell as long as those above it (${example}), and a line end`,
    found,
    cure: 'compare this cell with the device; if something is missing, export the session again. If it is whole, end the line with Enter',
    forReader: 'The session file stops without a line end in its last row, which may lack a digit.',
  });
}
