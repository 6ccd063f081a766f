import { readCell } from './cell.ts';
import type { Report } from './collector.ts';
import type { CsvRecords } from './records.ts';
import type { Table } from './table.ts';

/** Whether a line inside a cell looks like a row of the file: a quote that was meant to close has swallowed it. */
function looksLikeRow(line: string, delimiter: string, width: number): boolean {
  const cells = line.split(delimiter);
  if (cells.length < Math.max(3, width / 2)) return false;
  return cells.filter((cell) => readCell(cell).kind === 'number').length >= 2;
}

/** Refuses quotes that never close, rows without end, and zero characters inside names and notes. */
export function reportDamage(
  found: CsvRecords,
  tables: readonly Table[],
  delimiter: string,
  report: Report,
): void {
  const unclosed = (line: number, column: number, columnName: string | null): void =>
    report('unclosed-quote', {
      line,
      column,
      columnName,
      expected: 'a closing quote in the same cell',
      found: 'a quote that opens and does not close before the next cell',
      cure: 'close that quote or take it away; everything behind it may be misread',
    });
  if (found.unclosedQuote !== null) {
    const { line, column } = found.unclosedQuote;
    const block = tables.flatMap(({ rows }) => rows.slice(0, 1)).findLast((row) => row.line <= line)?.block;
    unclosed(line, column, block?.headings[column - 1]?.text ?? null);
  }
  if (found.tooLong !== null) {
    report('record-too-long', {
      line: found.tooLong,
      expected: 'a row of at most a million characters',
      found: 'a longer one',
      cure: 'export the session again; a quote that never closes is the usual cause',
    });
  }
  for (const table of tables) {
    const numeric = new Set(table.columns.metrics.map(({ index }) => index));
    for (const { cells, line, block } of table.rows) {
      for (const [index, cell] of cells.entries()) {
        const columnName = block.headings[index]?.text ?? null;
        if (/[\r\n]/.test(cell)) {
          const lines = cell.split(/\r\n|\n|\r/);
          if (lines.some((each) => looksLikeRow(each, delimiter, table.width)))
            unclosed(line, index + 1, columnName);
        }
        if (cell.includes('\0') && !numeric.has(index)) {
          report('nul-byte', {
            line,
            column: index + 1,
            columnName,
            expected: 'text without empty bytes',
            found: cell.replaceAll('\0', '␀').slice(0, 80),
            cure: 'export the session again: the file is damaged here',
          });
        }
      }
    }
  }
}
