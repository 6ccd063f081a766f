import { charts, type ReportChart } from '../../../src/charts/charts.ts';
import { drawnFigure } from '../../../src/charts/drawnFigure.ts';
import type { Figure } from '../../../src/charts/figure.ts';
import type { MadeChart } from '../../../src/charts/madeChart.ts';

/** A chart of an example, as the only one of its kind on its page. */
export function exampleFigure(chart: ReportChart, made: MadeChart): Figure {
  const { about } = made.kind === 'drawn' ? made.words : made;
  return drawnFigure({ id: chart, chart, about, question: charts[chart].question }, made);
}
