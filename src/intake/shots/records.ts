import { CsvError, parse } from 'csv-parse/sync';

/** One record of the file, cells as typed. */
export interface CsvRecord {
  readonly cells: readonly string[];
  /** Physical line on which it begins, from 1. */
  readonly line: number;
}

/** A quote that opens a cell and is not closed before a delimiter or a line end. */
interface UnclosedQuote {
  readonly line: number;
  readonly column: number;
}

export interface CsvRecords {
  readonly records: readonly CsvRecord[];
  readonly unclosedQuote: UnclosedQuote | null;
  /** Line of a record too long to be a shot; reading stopped there. */
  readonly tooLong: number | null;
}

/** Longest record in characters; a shot with a long note stays far below. */
const longestRecord = 1_000_000;

const breaks = /\r\n|\n|\r/g;

function linesIn(cells: readonly string[]): number {
  let lines = 1;
  for (const cell of cells) {
    if (cell.includes('\n') || cell.includes('\r')) lines += cell.match(breaks)?.length ?? 0;
  }
  return lines;
}

/** A quoted cell with spaces behind its closing quote, as the library hands it back. */
const spaceBehind = /^"([^"]*)"[^\S\r\n]+$/;

/**
 * Tells what to make of cells that the library hands back with their opening quote in front: their closing quote was
 * followed by something else than a delimiter. Null where it never closed. The text is searched onwards only.
 */
function quoteJudge(text: string, delimiter: string): (cell: string) => string | null {
  const doubled = text.includes('"""');
  let searchFrom = 0;
  return (cell) => {
    const inner = doubled ? undefined : spaceBehind.exec(cell)?.[1];
    if (inner !== undefined) return inner;
    if (!/[\r\n]/.test(cell) && !cell.includes(delimiter)) return cell;
    const asWritten = `"${cell.replaceAll('"', '""')}"`;
    const at = text.indexOf(asWritten, searchFrom);
    if (at < 0) return null;
    searchFrom = at + asWritten.length;
    return cell;
  };
}

/**
 * Splits decoded text into records. CRLF, LF and CR each end a line. A quote counts only at the start of a cell;
 * anywhere else it is a character.
 */
export function readRecords(text: string, delimiter: string): CsvRecords {
  const records: CsvRecord[] = [];
  let line = 1;
  let unclosedQuote: UnclosedQuote | null = null;
  const judge = quoteJudge(text, delimiter);
  const keep = (cells: readonly string[]): null => {
    const lines = linesIn(cells);
    const odd = cells.some((cell) => cell.startsWith('"'));
    const judged = !odd
      ? cells
      : cells.map((cell, index) => {
          if (!cell.startsWith('"') || unclosedQuote !== null) return cell;
          const settled = judge(cell);
          if (settled !== null) return settled;
          unclosedQuote = { line: line + linesIn(cells.slice(0, index)) - 1, column: index + 1 };
          return cell;
        });
    records.push({ cells: judged, line });
    line += lines;
    return null;
  };
  try {
    parse(text, {
      delimiter,
      columns: false,
      record_delimiter: ['\r\n', '\n', '\r'],
      relax_column_count: true,
      relax_quotes: true,
      max_record_size: longestRecord,
      on_record: keep,
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    if (error.code === 'CSV_QUOTE_NOT_CLOSED') {
      unclosedQuote ??= { line, column: Number(error['column'] ?? 0) + 1 };
    } else if (error.code === 'CSV_MAX_RECORD_SIZE') return { records, unclosedQuote, tooLong: line };
    else throw error;
  }
  return { records, unclosedQuote, tooLong: null };
}
