import type { PlannedShot } from './plannedOrder.ts';

/** Headings of an order sheet; the last two are for the pen, or for whoever types the session in. */
const orderSheetHeadings = ['Shot', 'Round', 'Contender', 'Hit', 'Note'] as const;

/**
 * The order sheet as a file: one row a shot, UTF-8, commas, CRLF (RFC 4180). A name that a spreadsheet would run as
 * a formula gets an apostrophe in front.
 *
 * @param labelOf the name under which the report knows a contender
 */
export function orderSheetCsv(order: readonly PlannedShot[], labelOf: (contender: string) => string): string {
  const rows = order.map(({ shot, round, contender }) => [
    String(shot),
    String(round),
    cell(labelOf(contender)),
    '',
    '',
  ]);
  return [orderSheetHeadings, ...rows].map((row) => `${row.join(',')}\r\n`).join('');
}

function cell(text: string): string {
  const guarded = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) ? `"${guarded.replace(/"/g, '""')}"` : guarded;
}
