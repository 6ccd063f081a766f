import type { ChartNumbers } from '../charts/chartNumbers.ts';
import { charts } from '../charts/charts.ts';
import type { DrawnFigure } from '../charts/figure.ts';
import { shotNumbers } from '../charts/shotNumbers.ts';
import { primaryMetrics } from '../prose/answers.ts';
import type { Report } from './report.ts';

/**
 * What a chart of a report draws, as numbers: its shots, or its own numbers unrounded.
 *
 * @throws Error where the report has no such chart
 */
export function numbersOfChart(
  { findings, session, source, telling }: Report,
  { id, chart, about }: Pick<DrawnFigure, 'id' | 'chart' | 'about'>,
): ChartNumbers {
  const primaries = primaryMetrics(findings);
  const metric = about.of === 'report' ? primaries[0] : primaries.find((one) => one.id === about.metric);
  if (metric === undefined || chart === 'meetings') throw new Error(`${source.slug} has no chart ${id}.`);
  const { numbers, measures } = charts[chart];
  return numbers === 'shots'
    ? shotNumbers({ session, telling }, about.of === 'report' ? measures : [metric.id])
    : numbers({ metric, primaries, session, front: source.front, telling });
}
