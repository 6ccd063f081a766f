import { metrics } from '../trade/metrics.ts';
import type { Report } from './report.ts';

/** Words by which a report is found: the game, what was varied, and every measure. */
export function keywordsOf({ source, findings }: Report): readonly string[] {
  return [...new Set(['golf', source.front.varied, ...findings.metrics.map(({ id }) => metrics[id].name)])];
}
