import type { DrawnFigure } from '../charts/figure.ts';
import { apartNumbers, golferNumbers, luckNumbers, withAndWithoutNumbers } from './chartDifferences.ts';
import type { ChartNumbers } from './chartNumbers.ts';
import { deliveryNumbers, spreadNumbers, yardsNumbers } from './chartParts.ts';
import { chartShots } from './chartShots.ts';
import { metricsIn } from './figureAnswer.ts';
import type { Report } from './report.ts';

/**
 * What a chart of a report draws, as numbers.
 *
 * @throws Error where the report has no such chart
 */
export function numbersOfChart(report: Report, figure: DrawnFigure): ChartNumbers {
  const { chart, about } = figure;
  const shown = metricsIn(report.findings, figure);
  const [metric] = shown;
  const pair =
    about.of === 'pair' ? metric?.pairs.find(({ a, b }) => a === about.a && b === about.b) : undefined;
  switch (chart) {
    case 'landing':
      return chartShots(report, ['carry', 'side']);
    case 'launch-and-spin':
      return chartShots(report, ['launch_angle', 'spin_rate']);
    case 'delivery':
      return deliveryNumbers(report);
    case 'spread':
      return spreadNumbers(report, shown);
  }
  if (metric === undefined) throw new Error(`${figure.id} is of no measure of ${report.source.slug}.`);
  switch (chart) {
    case 'apart':
      return apartNumbers(report, metric);
    case 'shots':
    case 'order':
      return chartShots(report, [metric.id]);
    case 'with-and-without':
      return withAndWithoutNumbers(report, metric);
    case 'luck':
      return luckNumbers(report, metric);
  }
  if (pair === undefined) throw new Error(`${figure.id} is of no pair of ${report.source.slug}.`);
  switch (chart) {
    case 'hitters':
      return golferNumbers(report, metric, pair);
    case 'yards':
      return yardsNumbers(report, metric, pair);
    case 'meetings':
      throw new Error('The chart of several reports stands in none of them.');
  }
}
