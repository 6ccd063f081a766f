import type { DrawnFigure } from '../charts/figure.ts';
import { figureTraits, type OfferNeed } from '../charts/figureTraits.ts';
import { widestPair } from '../charts/widestPair.ts';
import type { MetricFindings } from '../findings/findings.ts';
import { primaryMetrics } from '../prose/answer.ts';
import type { Report } from './report.ts';

/** Why a chart is not given away, though the page shows it with its words beside it; null where it is. */
export function refusal(report: Report, figure: DrawnFigure): string | null {
  const need = figureTraits[figure.chart].offeredWith;
  return need === null || isMet(need, report, metricsOf(figure, report)) ? null : whyNot(need, report);
}

/** The metrics that a figure is about: one, or all main measures. */
function metricsOf({ about }: DrawnFigure, { findings }: Report): readonly MetricFindings[] {
  return about.of === 'report'
    ? primaryMetrics(findings)
    : findings.metrics.filter(({ id }) => id === about.metric);
}

function isMet(need: OfferNeed, { findings }: Report, metrics: readonly MetricFindings[]): boolean {
  switch (need) {
    case 'spread-told-apart':
      return findings.metrics
        .filter(({ id }) => id === 'carry' || id === 'side')
        .some(({ spread }) => spread?.pairs.some(({ clear }) => clear) ?? false);
    case 'part-named':
      return findings.yards.some(
        ({ attribution }) =>
          attribution.state === 'attributed' && attribution.parts.some(({ finding }) => finding),
      );
    case 'credited-gap':
      return metrics.some(({ pairs }) =>
        pairs.some(({ status }) => status === 'clear' || status === 'size-uncertain'),
      );
    case 'luck-agrees-with-answer':
      return metrics.every((metric) => {
        const widest = widestPair(metric);
        if (widest === null || metric.luck === null) return false;
        const { status } = widest.pair;
        const told = status === 'clear' || status === 'size-uncertain';
        return widest.estimate > metric.luck.upTo === told;
      });
  }
}

function whyNot(need: OfferNeed, { telling }: Report): string {
  switch (need) {
    case 'spread-told-apart':
      return `No ${telling.noun} was clearly more consistent than another; alone, the chart would look as if one were.`;
    case 'part-named':
      return 'The difference is too small to split reliably; alone, the chart would look as if it were not.';
    case 'credited-gap':
      return 'No dearer one was clearly ahead.';
    case 'luck-agrees-with-answer':
      return 'Alone, the chart would seem to say something else than the answer.';
  }
}
