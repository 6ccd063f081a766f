import type { DrawnFigure } from '../charts/figure.ts';
import { onceEach } from '../stats/onceEach.ts';
import type { Report } from './report.ts';

/** What is said of a report's chart, worked out once for all pages and files that say it; neither ever changes. */
export function onceEachFigure<Value>(
  work: (report: Report, figure: DrawnFigure) => Value,
): (report: Report, figure: DrawnFigure) => Value {
  const ofReport = onceEach((report: Report) => onceEach((figure: DrawnFigure) => work(report, figure)));
  return (report, figure) => ofReport(report)(figure);
}
