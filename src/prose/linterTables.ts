import { unitNamed } from '../trade/unitWords.ts';
import { writtenNumbers, type WrittenNumber } from './linterNumbers.ts';

/** A number in a cell of a table, whose unit stands in the head of its column. */
interface NumberInTable {
  readonly number: WrittenNumber;
  /** Offset of the cell's number in the text. */
  readonly at: number;
  readonly heading: string;
  readonly cell: string;
}

interface Cell {
  readonly text: string;
  readonly at: number;
}

const rule = /^[ \t]*\|?[ \t]*:?-+:?[ \t]*(?:\|[ \t]*:?-+:?[ \t]*)*\|?[ \t]*$/;
const bareNumber = /^[+−-]?\d[\d,.\u00a0\u202f ]*$/;

/** The numbers in the tables of a Markdown text that get their unit from the head of their column: "Carry (yd)". */
export function numbersInTables(text: string): readonly NumberInTable[] {
  const lines: Cell[] = [];
  let at = 0;
  for (const line of text.split('\n')) {
    lines.push({ text: line, at });
    at += line.length + 1;
  }
  return lines.flatMap((line, index) => {
    const head = lines[index - 1];
    if (head === undefined || !line.text.includes('-') || !head.text.includes('|') || !rule.test(line.text))
      return [];
    const end = lines.findIndex(({ text: own }, row) => row > index && !own.includes('|'));
    const headings = cellsOf(head).map(({ text: heading }) => heading);
    return lines.slice(index + 1, end < 0 ? undefined : end).flatMap((row) => numbersIn(row, headings));
  });
}

function numbersIn(row: Cell, headings: readonly string[]): readonly NumberInTable[] {
  return cellsOf(row).flatMap((cell, column): readonly NumberInTable[] => {
    const heading = headings[column] ?? '';
    const unit = unitIn(heading);
    if (unit === null || !bareNumber.test(cell.text)) return [];
    const [number] = writtenNumbers(`${cell.text} ${unit}`);
    return number === undefined ? [] : [{ number, at: cell.at, heading, cell: cell.text }];
  });
}

/** "Carry (yd)" and "Carry, yards" name a unit. */
function unitIn(heading: string): string | null {
  const word = /\(([^()]+)\)\s*$|,\s*([^,]+)$/.exec(heading);
  const unit = (word?.[1] ?? word?.[2] ?? '').trim();
  return unit !== '' && unitNamed(unit) !== null ? unit : null;
}

function cellsOf({ text, at }: Cell): readonly Cell[] {
  const cells: Cell[] = [];
  let start = 0;
  for (const part of text.split('|')) {
    cells.push({ text: part.trim(), at: at + start + part.length - part.trimStart().length });
    start += part.length + 1;
  }
  return text.trimStart().startsWith('|') ? cells.slice(1) : cells;
}
