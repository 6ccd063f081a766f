import { delimiters } from './delimiter.ts';
import { knownHeadings, type IsNamed } from './headerRow.ts';
import { readRecords, type CsvRecord, type CsvRecords } from './records.ts';

interface AllRecords extends CsvRecords {
  /** Line of the first headings that are written with another delimiter than those above. */
  readonly changesAt: number | null;
}

/** Fewest headings that must be readable with another delimiter before it is believed. */
const fewest = 3;
/** How often a file may change its delimiter; each change reads the rest anew. */
const mostChanges = 5;

/** A delimiter with which a record is a line of headings, though it is none with the one in use. */
function otherDelimiter({ cells }: CsvRecord, used: string, isNamed: IsNamed): string | null {
  if (cells.length > 3) return null;
  const line = cells.join(used);
  // A line such as `Units, "speed: mph; distance: yd"` is a statement.
  if (line.length > 2000 || line.includes(':')) return null;
  const found = delimiters.find(
    (other) => other !== used && line.includes(other) && knownHeadings(line.split(other), isNamed) >= fewest,
  );
  return found === undefined || knownHeadings(cells, isNamed) > 0 ? null : found;
}

/** Where in a text a physical line begins. */
function startOfLine(text: string, line: number): number {
  const breaks = /\r\n|\n|\r/g;
  for (let passed = 1; passed < line; passed += 1) if (breaks.exec(text) === null) return text.length;
  return breaks.lastIndex;
}

/**
 * All records of a text. Exports pasted together may each have their own delimiter: from a line of headings that can
 * only be read with another one, that one holds.
 */
export function readAllRecords(
  text: string,
  delimiter: string,
  isNamed: IsNamed,
  changesLeft = mostChanges,
): AllRecords {
  const read = readRecords(text, delimiter);
  for (const [index, record] of read.records.entries()) {
    if (changesLeft === 0 || index === 0) continue;
    const other = otherDelimiter(record, delimiter, isNamed);
    if (other === null) continue;
    const rest = readAllRecords(text.slice(startOfLine(text, record.line)), other, isNamed, changesLeft - 1);
    const moved = record.line - 1;
    const { unclosedQuote, tooLong } = rest;
    return {
      records: [
        ...read.records.slice(0, index),
        ...rest.records.map(({ cells, line }) => ({ cells, line: line + moved })),
      ],
      unclosedQuote:
        unclosedQuote === null ? null : { line: unclosedQuote.line + moved, column: unclosedQuote.column },
      tooLong: tooLong === null ? null : tooLong + moved,
      changesAt: record.line,
    };
  }
  return { ...read, changesAt: null };
}
