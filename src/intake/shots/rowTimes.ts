import { isMissingMark } from './cell.ts';
import type { Report } from './collector.ts';
import type { Block } from './layout.ts';
import type { Table, TableRow } from './table.ts';
import { orderTold, readTime, type DateOrder } from './times.ts';

/** Date and time cells of a row, joined by a space. */
function timeText(table: Table, row: TableRow): string {
  const [date] = table.columns.roles.get('date') ?? [];
  const [time] = table.columns.roles.get('time') ?? [];
  return [date, time]
    .map((index) => (index === undefined ? '' : (row.cells[index] ?? '').trim()))
    .filter((text) => !isMissingMark(text))
    .join(' ');
}

/** Finds the order of day and month for the whole file, and says where it cannot be told. */
export function decideDateOrder(
  tables: readonly Table[],
  blocks: readonly Block[],
  report: Report,
): DateOrder {
  const told = new Set<DateOrder>();
  const open: { readonly text: string; readonly line: number }[] = [];
  const look = (text: string, line: number): void => {
    const order = orderTold(text);
    if (order === 'unknown' && open.length === 0) open.push({ text, line });
    else if (order !== null && order !== 'unknown') told.add(order);
  };
  for (const block of blocks) for (const { text, line } of block.statements.dates) look(text, line);
  for (const table of tables) {
    if (!table.columns.roles.has('date') && !table.columns.roles.has('time')) continue;
    for (const row of table.rows) look(timeText(table, row), row.line);
  }
  const [only] = told;
  if (told.size === 1 && only !== undefined) return only;
  const [first] = open;
  if (first !== undefined) {
    report('date-ambiguous', {
      line: first.line,
      expected: 'a date that can be read in one way, such as 2026-05-04',
      found: first.text,
      cure: 'state the date of the session in the report; dates of this form are left out, the shots are kept',
    });
  }
  return 'unknown';
}

/** The time of each row as ISO text. */
export function readRowTimes(table: Table, order: DateOrder, report: Report): readonly (string | null)[] {
  const unread: { readonly text: string; readonly line: number }[] = [];
  const times = table.rows.map((row) => {
    const text = timeText(table, row);
    if (text === '') return null;
    const time = readTime(text, order);
    if (time === null && orderTold(text) !== 'unknown') {
      unread.push({ text, line: row.line });
    }
    return time;
  });
  const [placed] = unread;
  if (placed !== undefined) {
    report('time-not-read', {
      line: placed.line,
      expected: 'a time such as 10:31:07 or 2026-05-04T10:31:07',
      found: placed.text.slice(0, 80),
      cure: `nothing need be done for the figures: the order of the rows counts (${unread.length} ${unread.length === 1 ? 'time' : 'times'} left out)`,
    });
  }
  return times;
}

/** The days that the lines above the headings state, as ISO dates; what cannot be read for certain is left out. */
export function statedDays(blocks: readonly Block[], order: DateOrder): readonly string[] {
  const days = blocks.flatMap(({ statements: { dates } }) =>
    dates.flatMap(({ text }) => /^\d{4}-\d{2}-\d{2}/.exec(readTime(text, order) ?? '')?.[0] ?? []),
  );
  return [...new Set(days)];
}
