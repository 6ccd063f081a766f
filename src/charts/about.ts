import type { MetricId } from '../trade/metrics.ts';

/** What a figure is about: one pair in one metric, one metric of the whole report, or the report itself. */
export type About =
  | { readonly of: 'pair'; readonly metric: MetricId; readonly a: string; readonly b: string }
  | { readonly of: 'metric'; readonly metric: MetricId }
  | { readonly of: 'report' };
