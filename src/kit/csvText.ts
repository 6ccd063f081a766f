import { guarded } from './guarded.ts';

/**
 * Rows as a CSV file: commas, CRLF (RFC 4180), the first row the heading; text that a spreadsheet would run as a formula
 * gets an apostrophe in front.
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => row.map(inCsv).join(',')).join('\r\n') + '\r\n';
}

function inCsv(text: string): string {
  const safe = guarded(text);
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}
