import { guarded } from './guarded.ts';
import type { Report } from './report.ts';
import { shotColumns } from './shotColumns.ts';

/**
 * `shots.csv`: one row a shot, left-out ones with their reason. UTF-8, commas, CRLF (RFC 4180); text that a spreadsheet
 * would run as a formula gets an apostrophe in front.
 */
export function shotsCsv(report: Report): string {
  const columns = shotColumns(report);
  const head = columns.map(({ field }) => field.name);
  const rows = report.session.shots.map((shot) => columns.map(({ cell }) => cell(shot)));
  return [head, ...rows].map((row) => row.map(inCsv).join(',')).join('\r\n') + '\r\n';
}

function inCsv(text: string): string {
  const safe = guarded(text);
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}
