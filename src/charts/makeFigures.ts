import type { MetricFindings } from '../findings/findings.ts';
import type { Session } from '../intake/session.ts';
import { primaryMetrics } from '../prose/answers.ts';
import type { Telling } from '../prose/telling.ts';
import type { Shown } from './chart.ts';
import { charts, reportCharts, type ReportChart } from './charts.ts';
import { drawnFigure } from './drawnFigure.ts';
import { figureHead, type Figure } from './figure.ts';

/**
 * All figures of a report in the order of the page; each main measure has its own of those that are about one. A figure
 * without its data is among them and says why, once where that holds for every main measure.
 */
export function makeFigures(telling: Telling, session: Session, front: Shown['front']): readonly Figure[] {
  const { findings } = telling;
  const primaries = primaryMetrics(findings);
  const figureOf = (chart: ReportChart, metric: MetricFindings): Figure => {
    const made = charts[chart].make({ metric, primaries, session, front, telling });
    const { about } = made.kind === 'drawn' ? made.words : made;
    return drawnFigure(figureHead(chart, about, findings), made);
  };
  const isLead = (chart: ReportChart): boolean => charts[chart].section === 'answer';
  const lead = primaries.flatMap((metric) =>
    reportCharts.filter(isLead).map((chart) => figureOf(chart, metric)),
  );
  const others = reportCharts
    .filter((chart) => !isLead(chart))
    .flatMap((chart) => {
      const of = charts[chart].each === 'metric' ? primaries : primaries.slice(0, 1);
      return saidOnce(of.map((metric) => figureOf(chart, metric)));
    });
  return [...lead, ...others];
}

function saidOnce(figures: readonly Figure[]): readonly Figure[] {
  const [first] = figures;
  return figures.filter(
    (figure) =>
      figure === first || figure.kind === 'drawn' || first?.kind === 'drawn' || figure.why !== first?.why,
  );
}
