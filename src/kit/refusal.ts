import type { DrawnFigure } from '../charts/figure.ts';
import type { OfferNeed } from '../charts/chart.ts';
import { charts } from '../charts/charts.ts';
import { chanceAgrees } from '../findings/chanceAgrees.ts';
import type { MetricFindings } from '../findings/findings.ts';
import { metricsIn } from './figureAnswer.ts';
import type { Report } from './report.ts';

/** What a chart would need to be given away and does not have, though the page shows it with its words beside it; null where it is given away. */
export function refusal(report: Report, figure: DrawnFigure): OfferNeed | null {
  const need = charts[figure.chart].offeredWith;
  return need === null || isMet(need, report, figure) ? null : need;
}

function isMet(need: OfferNeed, { findings }: Report, figure: DrawnFigure): boolean {
  const { about } = figure;
  const shown = metricsIn(findings, figure);
  switch (need) {
    case 'spread-told-apart':
      return shown.some(({ spread }) => spread?.pairs.some(({ clear }) => clear) === true);
    case 'part-named':
      return findings.yards.some(
        ({ a, b, attribution }) =>
          (about.of !== 'pair' || (about.a === a && about.b === b)) &&
          attribution.state === 'attributed' &&
          attribution.parts.some(({ finding }) => finding),
      );
    case 'luck-agrees-with-answer':
      return pairsIn(figure, shown).every(({ pair, metric }) => chanceAgrees(pair, metric));
  }
}

function pairsIn({ about }: DrawnFigure, shown: readonly MetricFindings[]) {
  return shown.flatMap((metric) =>
    metric.pairs
      .filter(({ a, b }) => about.of !== 'pair' || (about.a === a && about.b === b))
      .map((pair) => ({ pair, metric })),
  );
}
