import { metrics, type MetricId } from '../trade/metrics.ts';

/** The trade's name of a metric in running text, lower case. */
export function metricName(metric: MetricId): string {
  return metrics[metric].name;
}
