import type { Findings } from '../findings/findings.ts';
import { primaryMetrics } from '../prose/answers.ts';
import type { NarrativeCharts } from '../prose/narrativeValues.ts';
import { figureHead } from './figure.ts';
import { charts, pageOf, reportCharts } from './charts.ts';

/**
 * The charts that the narrative of a report may name, by the ids of their figures: those of the report and of its first
 * main measure by kind, those of a second one with its name, `apart-spin-rate`.
 */
export function narrativeCharts(findings: Findings): NarrativeCharts {
  const primaries = primaryMetrics(findings);
  const heads = reportCharts.flatMap((chart) => {
    const of = charts[chart].each === 'metric' ? primaries : primaries.slice(0, 1);
    return of.map(({ id }) => figureHead(chart, { of: 'metric', metric: id }, findings));
  });
  return Object.fromEntries(
    heads.map(({ id, chart, question }) => [
      id,
      {
        title: question,
        address: pageOf(chart) === 'details' ? `details/#${id}` : `#${id}`,
        mayMove: chart !== 'apart',
      },
    ]),
  );
}
