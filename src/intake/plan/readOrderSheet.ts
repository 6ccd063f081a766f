import type { Problem } from '../../problems/problem.ts';
import { collectProblems } from '../shots/collector.ts';
import { decodeFile } from '../shots/decodeFile.ts';
import { findDelimiter } from '../shots/delimiter.ts';
import { readRecords } from '../shots/records.ts';

/** One shot of an order sheet. */
export interface OrderEntry {
  readonly shot: number;
  readonly round: number | null;
  /** As typed; null for a warm-up swing. */
  readonly contender: string | null;
  readonly note: string | null;
  readonly line: number;
}

/** An order sheet as it came back from the session. */
export interface OrderSheet {
  readonly file: string;
  readonly entries: readonly OrderEntry[];
  readonly problems: readonly Problem[];
}

/** The headings of an order sheet, in any casing and order, and what stands under them. */
export const orderSheetColumns = {
  shot: { must: true, means: 'the number under which the session file has the shot' },
  round: { must: false, means: 'the round, or the set of visits' },
  contender: {
    must: true,
    means: 'what was hit with it, by any name that the report knows; `warm-up` for a warm-up swing',
  },
  hit: { must: false, means: 'to tick while hitting; not read' },
  note: { must: false, means: 'kept with the shot where the session file has no note' },
} as const;
type Name = keyof typeof orderSheetColumns;
const names: readonly string[] = Object.keys(orderSheetColumns);

const isNamed = (heading: string): boolean => names.some((name) => name === heading.trim().toLowerCase());
const warmUp = /^warm(?:ing)?[\s-]*up$/i;

/**
 * Reads an order sheet: which contender was hit with which shot. The shop may have saved it with a spreadsheet, added
 * rows for shots hit again, taken out rows not hit, or written "warm-up" for a contender.
 */
export function readOrderSheet(file: string, bytes: Uint8Array): OrderSheet {
  const { report, problems } = collectProblems(file);
  const text = decodeFile(bytes, report)?.text ?? null;
  if (text === null) return { file, entries: [], problems: problems() };
  const { records } = readRecords(text, findDelimiter(text, isNamed).delimiter);
  const at = records.findIndex(
    ({ cells }) => columnOf(cells, 'shot') >= 0 && columnOf(cells, 'contender') >= 0,
  );
  const head = records[at];
  if (head === undefined) {
    report('order-sheet-invalid', {
      line: 1,
      expected: 'a line of headings with Shot and Contender, as a plan writes it',
      found: (text.trim().split(/[\r\n]/)[0] ?? '').slice(0, 80),
      cure: 'put the two headings back',
    });
    return { file, entries: [], problems: problems() };
  }
  const numberTaken = new Map<number, number>();
  const entries = records.slice(at + 1).flatMap(({ cells, line }): OrderEntry[] => {
    const read = (name: Name): string => (cells[columnOf(head.cells, name)] ?? '').trim();
    const placeOf = (name: Name) => {
      const column = columnOf(head.cells, name);
      return { line, column: column + 1, columnName: head.cells[column] ?? null };
    };
    if (cells.every((cell) => cell.trim() === '')) return [];
    const shot = wholeNumber(read('shot'));
    const contender = read('contender').replace(/^'(?=[=+\-@])/, '');
    if (shot === null) {
      report('order-sheet-invalid', {
        ...placeOf('shot'),
        expected: 'the number of the shot',
        found: read('shot') || null,
        cure: 'write the number under which the monitor has the shot',
      });
      return [];
    }
    const earlier = numberTaken.get(shot);
    if (earlier !== undefined) {
      report('order-sheet-invalid', {
        ...placeOf('shot'),
        expected: 'each shot number once',
        found: `${shot}, as in line ${earlier}`,
        cure: 'give each row the number under which the monitor has the shot',
      });
      return [];
    }
    numberTaken.set(shot, line);
    if (contender === '') {
      report('order-sheet-invalid', {
        ...placeOf('contender'),
        expected: 'a contender, or warm-up',
        found: null,
        cure: 'write what was hit with this shot, or take the row out if it was not hit',
      });
      return [];
    }
    return [
      {
        shot,
        round: wholeNumber(read('round')),
        contender: warmUp.test(contender) ? null : contender,
        note: read('note') || null,
        line,
      },
    ];
  });
  return { file, entries, problems: problems() };
}

function columnOf(cells: readonly string[], name: Name): number {
  return cells.findIndex((cell) => cell.trim().toLowerCase() === name);
}

function wholeNumber(text: string): number | null {
  return /^[1-9]\d{0,6}$/.test(text) ? Number(text) : null;
}
