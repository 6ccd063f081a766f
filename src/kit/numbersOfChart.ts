import type { DrawnFigure } from '../charts/figure.ts';
import { figureTraits, type ChartKind } from '../charts/figureTraits.ts';
import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { apartNumbers, golferNumbers, luckNumbers, withAndWithoutNumbers } from './chartDifferences.ts';
import { wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import { deliveryNumbers, spreadNumbers, yardsNumbers } from './chartParts.ts';
import { chartShots } from './chartShots.ts';
import { metricsIn } from './figureAnswer.ts';
import type { Report } from './report.ts';

type Numbers = (report: Report, figure: DrawnFigure) => ChartNumbers;

/** Numbers that are finer than what is printed of them. */
const unrounded: Readonly<Partial<Record<ChartKind, Numbers>>> = {
  apart: (report, figure) => apartNumbers(report, measureOf(report, figure)),
  delivery: deliveryNumbers,
  spread: (report, figure) => spreadNumbers(report, metricsIn(report.findings, figure)),
  'with-and-without': (report, figure) => withAndWithoutNumbers(report, measureOf(report, figure)),
  luck: (report, figure) => luckNumbers(report, measureOf(report, figure)),
  hitters: (report, figure) => golferNumbers(report, measureOf(report, figure), pairOf(report, figure)),
  yards: (report, figure) => yardsNumbers(report, measureOf(report, figure), pairOf(report, figure)),
};

/**
 * What a chart of a report draws, as numbers: shots, its own numbers unrounded, else its table as printed.
 *
 * @throws Error where the report has no such chart
 */
export function numbersOfChart(report: Report, figure: DrawnFigure): ChartNumbers {
  const { chart, about } = figure;
  const { ofShots, measures } = figureTraits[chart];
  if (ofShots) return chartShots(report, about.of === 'report' ? measures : [about.metric]);
  return unrounded[chart]?.(report, figure) ?? printed(figure);
}

function printed({ table: { head, rows } }: DrawnFigure): ChartNumbers {
  return { columns: head.map((name) => wordsColumn(name, `${name}, as printed.`)), rows };
}

function measureOf({ findings, source }: Report, figure: DrawnFigure): MetricFindings {
  const [metric] = metricsIn(findings, figure);
  if (metric === undefined) throw new Error(`${figure.id} is of no measure of ${source.slug}.`);
  return metric;
}

function pairOf(report: Report, figure: DrawnFigure): PairFindings {
  const { about, id } = figure;
  const pair = measureOf(report, figure).pairs.find(
    ({ a, b }) => about.of === 'pair' && a === about.a && b === about.b,
  );
  if (pair === undefined) throw new Error(`${id} is of no pair of ${report.source.slug}.`);
  return pair;
}
