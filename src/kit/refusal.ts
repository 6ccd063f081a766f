import type { DrawnFigure } from '../charts/figure.ts';
import type { MetricFindings } from '../findings/findings.ts';
import { isGap } from '../findings/verdict.ts';
import { primaryMetrics } from '../prose/answer.ts';
import type { Report } from './report.ts';

/** Why a chart is not given away, though the page shows it with its words beside it; null where it is. */
export function refusal(report: Report, { id }: DrawnFigure): string | null {
  if (isOf(id, 'spread') && !anySpreadTold(report.findings.metrics)) {
    return `These shots cannot call one ${report.telling.noun} more repeatable than another; alone, the chart would look as if they did.`;
  }
  if (isOf(id, 'yards') && !anyPartNamed(report)) {
    return 'No part of the gap is large enough, and sure enough, to name; alone, the chart would look as if one were.';
  }
  if (isOf(id, 'price') && !anyCreditedGap(report)) {
    return 'No clear gain to put a price on.';
  }
  return null;
}

function isOf(id: string, chart: string): boolean {
  return id === chart || id.startsWith(`${chart}-`);
}

/** Whether any gap has a part that the flight model can name. */
function anyPartNamed({ findings }: Report): boolean {
  return findings.yards.some(
    ({ attribution }) =>
      attribution.state === 'attributed' && attribution.parts.some(({ finding }) => finding),
  );
}

/** Whether in carry or side two spreads are told apart: judged, and the test of both says so. */
function anySpreadTold(all: readonly MetricFindings[]): boolean {
  return all
    .filter(({ id }) => id === 'carry' || id === 'side')
    .some(({ spread }) => spread !== null && spread.pairs.some(({ p }) => p < 0.05));
}

function anyCreditedGap({ findings }: Report): boolean {
  return primaryMetrics(findings).some(({ pairs }) =>
    pairs.some(({ verdict, credit }) => isGap(verdict) && verdict !== 'small' && credit === 'contender'),
  );
}
