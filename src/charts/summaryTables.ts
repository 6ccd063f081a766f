import type { Telling } from '../prose/telling.ts';
import type { Table } from './table.ts';
import { shotTable } from './shots.ts';

/** Summary figures of every metric of the report, the primary ones first. */
export function summaryTables(telling: Telling): readonly Table[] {
  return telling.findings.metrics.map((metric) => shotTable(metric, telling));
}
