import type { DrawnFigure } from '../charts/figure.ts';
import type { Interval, MetricFindings } from '../findings/findings.ts';
import { isGap } from '../findings/verdict.ts';
import { primaryMetrics } from '../prose/answer.ts';
import type { Report } from './report.ts';

/** Why a chart is not given away, though the page shows it with its words beside it; null where it is. */
export function refusal(report: Report, { id }: DrawnFigure): string | null {
  if (isOf(id, 'spread') && !anySpreadApart(report.findings.metrics)) {
    return `The spreads overlap so much that these shots cannot call one ${report.telling.noun} more repeatable; alone, the chart would look as if they did.`;
  }
  if (isOf(id, 'price') && !anyCreditedGap(report)) {
    return 'No clear gain to put a price on.';
  }
  return null;
}

function isOf(id: string, chart: string): boolean {
  return id === chart || id.startsWith(`${chart}-`);
}

/** Whether in some metric of landing two spreads are so far apart that their intervals do not meet. */
function anySpreadApart(all: readonly MetricFindings[]): boolean {
  return all
    .filter(({ id }) => id === 'carry' || id === 'side')
    .some(({ byContender }) => {
      const known = byContender.flatMap(({ sdCi }) => (sdCi === null ? [] : [sdCi]));
      return known.some((x) => known.some((y) => isBelow(x, y)));
    });
}

function isBelow([, upper]: Interval, [lower]: Interval): boolean {
  return upper < lower;
}

function anyCreditedGap({ findings }: Report): boolean {
  return primaryMetrics(findings).some(({ pairs }) =>
    pairs.some(({ verdict, credit }) => isGap(verdict) && verdict !== 'small' && credit === 'contender'),
  );
}
