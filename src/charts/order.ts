import type { MetricFindings } from '../findings/findings.ts';
import type { Session } from '../intake/session.ts';
import {
  noReading,
  orderFinding,
  orderNotKept,
  orderWords,
  severalGolfers,
  shotListWords,
  trendWords,
  type TrendTold,
} from '../prose/english/charts/order.ts';
import { axisOf, leftOutWord } from '../prose/english/charts/shots.ts';
import { printingOf, printReading } from '../prose/printSteps.ts';
import { toReader, unitsIn } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import type { Shown } from './chart.ts';
import { contenderName } from './contenderName.ts';
import { drawnShots, drawnWords, mostDrawn } from './drawnShots.ts';
import { absentChart, type MadeChart } from './madeChart.ts';
import { drawOrder, type OrderTrend } from './orderDrawing.ts';
import type { Table } from './table.ts';

/** *Shots in order*: did the golfer warm up or tire? One hitter, rows in hit order. */
export function makeOrder({ metric, session, telling }: Shown): MadeChart {
  const { order, hitters } = telling.findings.design;
  const about = { of: 'metric', metric: metric.id } as const;
  if (hitters !== 1) return absentChart({ about }, severalGolfers);
  if (order === 'unknown' || order.startsWith('stated')) return absentChart({ about }, orderNotKept);
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const trends = trendsOf(metric, session, telling);
  const driftShows = metric.drift !== null && (metric.drift.ci[0] > 0 || metric.drift.ci[1] < 0);
  const words = orderWords(
    metric,
    order,
    { trends: trends.map(({ trend }) => trend.words), driftShows },
    telling,
  );
  return drawOrder({
    about,
    ...words,
    finding: orderFinding(
      metric.id,
      trends.map(({ told }) => told),
      telling,
    ),
    found: [...words.found, ...drawnWords(session)],
    table: shotList(metric, session, telling),
    contenders: telling.findings.contenders.map(({ id }) => contenderName(id, telling)),
    shots: drawnShots(session).flatMap(({ order: number, contender, values, excluded }) => {
      const value = values[metric.id];
      return typeof value === 'number'
        ? [
            {
              number,
              value: read(value),
              contender: contenderName(contender, telling).index,
              leftOut: excluded !== null,
            },
          ]
        : [];
    }),
    trends: trends.map(({ trend }) => trend),
    roundIn: unitsIn(telling.system, metric.id, telling.scalesIn),
    axis: axisOf(metric, telling),
    leftOut: leftOutWord,
    recorded: drawnShots(session).length,
  });
}

/** A trend as it is drawn, and which way it went. */
interface ToldTrend {
  readonly trend: OrderTrend;
  readonly told: TrendTold;
}

/** Each contender's line over its own counted shots, through their average. */
function trendsOf(metric: MetricFindings, session: Session, telling: Telling): readonly ToldTrend[] {
  const printing = printingOf(metric, telling);
  return metric.trends.flatMap((trend) => {
    const mean = metric.byContender.find(({ id }) => id === trend.id)?.mean ?? null;
    const numbers = session.shots.flatMap(({ contender, excluded, values, order }) =>
      contender === trend.id && excluded === null && typeof values[metric.id] === 'number' ? [order] : [],
    );
    const [first, last] = [numbers[0], numbers.at(-1)];
    if (mean === null || first === undefined || last === undefined || first === last) return [];
    const centre = numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
    const at = (number: number) => ({
      number,
      value: toReader(mean + trend.slope * (number - centre), metric.id, telling.system),
    });
    return [
      {
        trend: {
          contender: contenderName(trend.id, telling).index,
          from: at(first),
          to: at(last),
          words: trendWords(metric, trend, printing, telling),
        },
        told: {
          id: trend.id,
          went: trend.ci[0] > 0 ? 'rose' : trend.ci[1] < 0 ? 'fell' : 'unclear',
        },
      },
    ];
  });
}

function shotList(metric: MetricFindings, session: Session, telling: Telling): Table {
  const printing = printingOf(metric, telling);
  return {
    ...shotListWords(metric, session.shots.length <= mostDrawn, telling),
    rows: drawnShots(session).map(({ order, contender, values, excluded }) => {
      const value = values[metric.id];
      return [
        String(order),
        telling.nameOf(contender),
        typeof value === 'number' ? printReading(value, printing) : noReading,
        excluded === null ? 'no' : 'yes',
      ];
    }),
  };
}
