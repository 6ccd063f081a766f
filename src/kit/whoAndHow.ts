import type { MetricFindings } from '../findings/findings.ts';
import { primaryMetrics } from '../prose/answers.ts';
import { dateInWords } from '../prose/date.ts';
import { golfersShotsAndOrder, shotsAndOrder } from '../prose/english/kit/whoAndHow.ts';
import type { Report } from './report.ts';

/** Counted shots with each, of a measure, or of all shots where no measure is meant. */
export function countsIn(
  { findings }: Pick<Report, 'findings'>,
  metric: MetricFindings | null,
): readonly number[] {
  return metric === null
    ? findings.contenders.map(({ shots, excluded }) => shots - excluded)
    : metric.byContender.map(({ n }) => n);
}

/** Golfers, shots, order and day of a report, as its main measures count them. */
export function reportInBrief(report: Report): string {
  const [first = null] = primaryMetrics(report.findings);
  return golfersShotsAndOrder(
    report.telling,
    countsIn(report, first),
    dateInWords(report.source.front.date, report.source.locale),
  );
}

/** Shots and order of a report, where its golfers and its day stand by themselves. */
export function howHit(report: Report): string {
  const [first = null] = primaryMetrics(report.findings);
  return shotsAndOrder(report.telling, countsIn(report, first));
}
