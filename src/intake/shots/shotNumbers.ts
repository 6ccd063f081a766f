import { isMissingMark } from './cell.ts';
import type { Report } from './collector.ts';
import { isWarmUpWord } from './summaryWords.ts';
import type { Table } from './table.ts';

const written =
  /^(?:(?:shot|hit|round|rotation|set|block|turn|visit|no\.?|nr\.?|s|r)\s*)?#?\s*(\d{1,9})(?:[.,]0+)?\.?$/i;

const textOf = (cell: string): string => {
  const text = cell.replace(/\s+/g, ' ').trim();
  return /^="(.*)"$/.exec(text)?.[1]?.trim() ?? text.replace(/^'/, '');
};

/**
 * Reads a column of whole numbers, shot or round: `3`, `#3`, `Shot 3`. A column without any number holds names: rounds
 * are then counted in the order they appear, shots have no number.
 */
export function readWholeNumbers(
  table: Table,
  role: 'shot' | 'round',
  report: Report,
): readonly (number | null)[] {
  const headings = table.rows[0]?.block.headings ?? [];
  const candidates = table.columns.roles.get(role) ?? [];
  // A column headed Shot goes before one headed No, which may number the rows.
  const index = candidates.find((each) => headings[each]?.text.toLowerCase().includes(role)) ?? candidates[0];
  if (index === undefined) return table.rows.map(() => null);
  const columnName = headings[index]?.text ?? null;
  const texts = table.rows.map(({ cells }) => textOf(cells[index] ?? ''));
  const names = texts.every((text) => !written.test(text) && !text.includes('\0'));
  const seen = new Map<string, number>();
  return texts.map((text, row) => {
    if (isMissingMark(text) || isWarmUpWord(text)) return null;
    const digits = written.exec(text)?.[1];
    if (digits !== undefined) return Number(digits);
    if (names) {
      if (!seen.has(text)) seen.set(text, seen.size + 1);
      return role === 'round' ? (seen.get(text) ?? null) : null;
    }
    const nul = text.includes('\0');
    report(nul ? 'nul-byte' : 'not-a-number', {
      line: table.rows[row]?.line ?? null,
      column: index + 1,
      columnName,
      expected: `the number of the ${role}`,
      found: text.replaceAll('\0', '␀').slice(0, 80),
      cure: nul
        ? 'export the session again: the file is damaged here'
        : 'write its number, or empty the cell',
    });
    return null;
  });
}
