import { readCell } from './cell.ts';
import type { Heading } from './heading.ts';
import type { CsvRecord } from './records.ts';
import { isSummaryWord } from './summaryWords.ts';
import { spacesJoined } from './texts.ts';

type Cells = readonly string[];

/** What the kind of a line is judged against: the headings above it and the rows already under them. */
interface Under {
  readonly headings: readonly Heading[];
  readonly rows: readonly CsvRecord[];
}

export const isBlank = (cells: Cells): boolean => cells.every((cell) => cell.trim() === '');

/** `sep=;` and the like: an instruction to a spreadsheet. */
export const isInstruction = (cells: Cells): boolean =>
  /^"?sep=/i.test((cells[0] ?? '').trim()) && isBlank(cells.slice(1));

export const isComment = (cells: Cells): boolean => /^(?:#\s|\/\/)/.test((cells[0] ?? '').trimStart());

/** Cells that are filled, outer spaces off. */
export const filledCells = (cells: Cells): Cells =>
  cells.map((cell) => cell.trim()).filter((cell) => cell !== '');

/** Position of the club column, from 0; -1 where there is none. */
export const clubColumn = (headings: readonly Heading[]): number =>
  headings.findIndex(({ meaning }) => meaning.kind === 'role' && meaning.role === 'club');

/** Whether a line holds a reading or a shot number: then it must be read as a shot or refused. */
export function holdsNumber(cells: Cells, { headings }: Under): boolean {
  return cells.some((cell, index) => {
    const meaning = headings[index]?.meaning;
    if (meaning === undefined || !/\d/.test(cell)) return false;
    const measures = meaning.kind === 'metric' || meaning.kind === 'ambiguous';
    const counts = meaning.kind === 'role' && meaning.role === 'shot';
    return (measures || counts) && readCell(cell).kind === 'number';
  });
}

/** Whether the club cell of a line names a club that has shots above it. */
function namesKnownClub(cells: Cells, { headings, rows }: Under): boolean {
  const clubs = clubColumn(headings);
  const club = spacesJoined(cells[clubs] ?? '').toLowerCase();
  return club !== '' && rows.some((row) => spacesJoined(row.cells[clubs] ?? '').toLowerCase() === club);
}

/** A line that may belong to the headings below it: no shot of the block above. */
export function standsAbove(cells: Cells, under: Under): boolean {
  const filled = filledCells(cells);
  const width = under.headings.length;
  if (cells.length >= width && 2 * filled.length >= width) return false;
  if (!holdsNumber(cells, under)) return !(cells.length >= width && namesKnownClub(cells, under));
  return filled.length <= 2 && width >= 4 && !/^[\d#]/.test(filled[0] ?? '') && !namesKnownClub(cells, under);
}

/** A full row that names its club and nothing else, where shots have no number that could be asked for. */
function isUnmeasuredShot(cells: Cells, { headings }: Under): boolean {
  const numbered = headings.some(({ meaning }) => meaning.kind === 'role' && meaning.role === 'shot');
  return !numbered && (cells[clubColumn(headings)] ?? '').trim() !== '';
}

/** One or two texts, too short for a row, without a number where a number would stand. */
export function isRemark(cells: Cells, under: Under): boolean {
  const filled = filledCells(cells);
  if (filled.length > 2 || holdsNumber(cells, under)) return false;
  const width = under.headings.length;
  if (cells.length < width) return filled.length === 1 || width >= 4;
  return filled.length === 1 && !isUnmeasuredShot(cells, under);
}

/** A row of averages and the like: its word stands where the shot number would, or in a column without a name. */
export function isSummary(cells: Cells, { headings }: Under): boolean {
  return headings.some(({ text, meaning }, index) => {
    const names =
      (meaning.kind === 'role' && ['shot', 'time', 'round'].includes(meaning.role)) || text === '';
    return names && isSummaryWord(cells[index] ?? '');
  });
}
