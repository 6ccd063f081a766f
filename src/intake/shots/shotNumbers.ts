import { isMissingMark } from './cell.ts';
import type { Report } from './collector.ts';
import { isWarmUpWord } from './summaryWords.ts';
import type { Table } from './table.ts';

const written =
  /^(?:(?:shot|hit|round|rotation|set|block|turn|visit|no\.?|nr\.?|s|r)\s*)?#?\s*(\d{1,9})(?:[.,]0+)?\.?$/i;

/** Reads a column of whole numbers, shot or round: `3`, `#3`, `Shot 3`. */
export function readWholeNumbers(
  table: Table,
  role: 'shot' | 'round',
  report: Report,
): readonly (number | null)[] {
  const [index] = table.columns.roles.get(role) ?? [];
  if (index === undefined) return table.rows.map(() => null);
  const columnName = table.rows[0]?.block.headings[index]?.text ?? null;
  return table.rows.map(({ cells, line }) => {
    const text = (cells[index] ?? '').replace(/\s+/g, ' ').trim();
    const bare = /^="(.*)"$/.exec(text)?.[1]?.trim() ?? text.replace(/^'/, '');
    if (isMissingMark(bare) || isWarmUpWord(bare)) return null;
    const digits = written.exec(bare)?.[1];
    if (digits !== undefined) return Number(digits);
    const nul = bare.includes('\0');
    report(
      nul ? 'nul-byte' : 'not-a-number',
      { line, column: index + 1, columnName },
      {
        expected: `the number of the ${role}`,
        found: bare.replaceAll('\0', '␀').slice(0, 80),
        cure: nul
          ? 'export the session again: the file is damaged here'
          : 'write its number, or empty the cell',
      },
    );
    return null;
  });
}
