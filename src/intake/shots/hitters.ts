import { isMissingMark } from './cell.ts';
import type { Report } from './collector.ts';
import { firstSpelling, namesForBlanks, nameText, type Spellings } from './names.ts';
import type { Table, TableRow } from './table.ts';

/** Who hit each row; null where the file does not say. */
export function readHitters(table: Table, spellings: Spellings): readonly (string | null)[] {
  const [index] = table.columns.roles.get('hitter') ?? [];
  const cellOf = ({ cells }: TableRow): string => {
    const cell = index === undefined ? '' : nameText(cells[index] ?? '');
    return isMissingMark(cell) ? '' : cell;
  };
  const holding = namesForBlanks(table, 'hitter', cellOf);
  return table.rows.map((row) => {
    const cell = cellOf(row);
    if (cell !== '') return firstSpelling(cell, row.line, spellings);
    const { hitter } = row.block;
    return hitter !== null && holding.has(nameText(hitter))
      ? firstSpelling(hitter, row.line, spellings)
      : null;
  });
}

/** Says that several people hit, and where some shots name nobody. */
export function reportHitters(hitters: readonly (string | null)[], report: Report): void {
  const named = new Set(hitters.filter((hitter) => hitter !== null));
  if (named.size > 1) {
    report('multiple-hitters', {
      expected: 'one hitter, or a report that lists each of them',
      found: `${named.size}: ${[...named].slice(0, 10).join(', ')}`,
      cure: 'list the hitters in the report; their shots are never pooled without a word',
      forReader: `${named.size} people hit these shots.`,
    });
  }
  const nameless = hitters.filter((hitter) => hitter === null).length;
  if (named.size > 0 && nameless > 0) {
    report('hitter-missing', {
      expected: 'the hitter of every shot',
      found: `${nameless} of ${hitters.length} shots name nobody`,
      cure: 'write the hitter into these rows',
    });
  }
}
