import { csvText } from './csvText.ts';
import type { Report } from './report.ts';
import { shotColumns } from './shotColumns.ts';

/** `shots.csv`: one row a shot, left-out ones with their reason. UTF-8, see `csvText`. */
export function shotsCsv(report: Report): string {
  const columns = shotColumns(report);
  const head = columns.map(({ field }) => field.name);
  const rows = report.session.shots.map((shot) => columns.map(({ cell }) => cell(shot)));
  return csvText([head, ...rows]);
}
