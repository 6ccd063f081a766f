import type { MetricFindings } from '../findings/findings.ts';
import type { Front } from '../intake/authored/front.ts';
import { clubTexts } from '../intake/authored/clubTexts.ts';
import type { Session } from '../intake/session.ts';
import { primaryMetrics } from '../prose/answers.ts';
import type { Telling } from '../prose/telling.ts';
import { hitsForDistance } from '../trade/clubKind.ts';
import { apartFigure } from './apartFigure.ts';
import { deliveryFigure } from './deliveryFigure.ts';
import type { Figure } from './figure.ts';
import { figureTraits, reportCharts, type ReportChart } from './figureTraits.ts';
import { hittersFigure } from './hittersFigure.ts';
import { landingFigure } from './landingFigure.ts';
import { launchFigure } from './launchFigure.ts';
import { luckFigure } from './luckFigure.ts';
import { orderFigure } from './orderFigure.ts';
import { shotsFigure } from './shotsFigure.ts';
import { spreadFigure } from './spreadFigure.ts';
import { withAndWithoutFigure } from './withAndWithoutFigure.ts';
import { yardsFigure } from './yardsFigure.ts';

/** Where a report says which club was hit. */
type ClubFront = Pick<Front, 'title' | 'question' | 'varied' | 'held' | 'contenders'>;

/** What figures are made from. */
interface Shown {
  readonly telling: Telling;
  readonly session: Session;
  readonly front: ClubFront;
  readonly primaries: readonly MetricFindings[];
}

/** Makes one chart: of a main measure, or of the report. */
type Maker = (metric: MetricFindings, shown: Shown) => Figure;

const makers: Readonly<Record<ReportChart, Maker>> = {
  apart: (metric, { telling }) => apartFigure(metric, telling),
  shots: (metric, { session, telling }) => shotsFigure(metric, session, telling),
  landing: (_, { session, telling }) => landingFigure(session, telling),
  delivery: (_, { telling }) => deliveryFigure(telling),
  order: (metric, { session, telling }) => orderFigure(metric, session, telling),
  yards: (_, { primaries, telling }) => yardsFigure(primaries, telling),
  'launch-and-spin': (_, { session, front, telling }) =>
    launchFigure(session, hitsForDistance(clubTexts(front)), telling),
  hitters: (metric, { telling }) => hittersFigure(metric, telling),
  luck: (metric, { telling }) => luckFigure(metric, telling),
  spread: (_, { telling }) => spreadFigure(telling),
  'with-and-without': (metric, { session, telling }) => withAndWithoutFigure(metric, session, telling),
};

/**
 * All figures of a report in the order of the page; each main measure has its own of those that are about one. A figure
 * without its data is among them and says why, once where that holds for every main measure.
 */
export function makeFigures(telling: Telling, session: Session, front: ClubFront): readonly Figure[] {
  const primaries = primaryMetrics(telling.findings);
  const shown = { telling, session, front, primaries };
  const isLead = (chart: ReportChart): boolean => figureTraits[chart].section === 'answer';
  const lead = primaries.flatMap((metric) =>
    reportCharts.filter(isLead).map((chart) => makers[chart](metric, shown)),
  );
  const others = reportCharts
    .filter((chart) => !isLead(chart))
    .flatMap((chart) => {
      const of = figureTraits[chart].each === 'metric' ? primaries : primaries.slice(0, 1);
      return saidOnce(of.map((metric) => makers[chart](metric, shown)));
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
