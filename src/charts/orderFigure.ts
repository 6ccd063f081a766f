import type { MetricFindings } from '../findings/findings.ts';
import type { Session } from '../intake/session.ts';
import { metrics } from '../trade/metrics.ts';
import { orderInWords } from '../prose/forWhom.ts';
import { finerStep, formatNumber, printAt, stepFor } from '../prose/numbers.ts';
import { shortUnit, toReader, unitFor, unitsIn, unitWord, withUnit } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised, sentence } from '../prose/words.ts';
import { contenderName } from './contenderName.ts';
import { drawnShots, drawnWords, mostDrawn } from './drawnShots.ts';
import type { Figure, Table } from './figure.ts';
import { orderChart } from './order.ts';
import type { OrderTrend } from './orderInput.ts';

const id = 'order';
const question = 'Shots in order';
/** The drift is told over this many shots. */
const stretch = 10;

/** *Shots in order*: did the golfer warm up or tire? One hitter, rows in hit order. */
export function orderFigure(metric: MetricFindings, session: Session, telling: Telling): Figure {
  const { order } = telling.findings.design;
  if (session.hitters.length !== 1) {
    return { kind: 'absent', id, question, why: 'Not drawn: it is a chart for one golfer.' };
  }
  if (order === 'unknown' || order.startsWith('stated')) {
    return {
      kind: 'absent',
      id,
      question,
      why: 'Not drawn: the rows of the file do not keep the order of the shots.',
    };
  }
  const unit = unitFor(metric.id, telling.system);
  const { name } = metrics[metric.id];
  const trend = trendOf(metric, session, telling);
  return orderChart({
    id,
    question,
    subject: `${capitalised(name)} over shot number`,
    finding:
      `The ${telling.nouns} were hit ${orderInWords(order)}. ${trend === null ? '' : `${trend.words} `}${driftShows(metric) ? '' : 'That no drift shows is no proof that there was none.'}`.trimEnd() +
      drawnWords(session),
    description: `${sentence(`${name} of every shot in the order it was hit`)} ${trend?.words ?? 'Too few shots for a trend.'}`,
    table: table(metric, session, telling),
    contenders: telling.findings.contenders.map(({ id: contender }) => contenderName(contender, telling)),
    shots: drawnShots(session).flatMap((shot) => {
      const value = shot.values[metric.id];
      return typeof value === 'number'
        ? [
            {
              number: shot.order,
              value: toReader(value, metric.id, telling.system),
              contender: contenderName(shot.contender, telling).index,
              leftOut: shot.excluded !== null,
            },
          ]
        : [];
    }),
    trend,
    roundIn: unitsIn(telling.system, metric.id, telling.scalesIn),
    axis: capitalised(unitWord(unit) === '' ? name : `${name} in ${unitWord(unit)}`),
    numberAxis: 'Shot number',
    leftOut: 'left out',
    recorded: session.shots.length,
  });
}

function driftShows({ drift }: MetricFindings): boolean {
  return drift !== null && (drift.ci[0] > 0 || drift.ci[1] < 0);
}

function trendOf(metric: MetricFindings, session: Session, telling: Telling): OrderTrend | null {
  const { drift } = metric;
  const counted = session.shots.flatMap((shot) => {
    const value = shot.values[metric.id];
    return shot.excluded === null && typeof value === 'number' ? [{ order: shot.order, value }] : [];
  });
  const first = counted[0]?.order;
  const last = counted[counted.length - 1]?.order;
  if (drift === null || first === undefined || last === undefined || first === last) return null;
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const centre = counted.reduce((sum, { order }) => sum + order, 0) / counted.length;
  const mean = read(counted.reduce((sum, { value }) => sum + value, 0) / counted.length);
  const at = (slope: number, number: number): number => mean + read(slope) * (number - centre);
  const ends = drift.ci.map((slope) => at(slope, last)).sort((x, y) => x - y);
  return {
    from: { number: first, value: at(drift.slope, first) },
    to: { number: last, value: at(drift.slope, last) },
    interval: { low: ends[0] ?? mean, high: ends[1] ?? mean },
    words: trendWords(metric, drift, telling),
  };
}

/** "Trend: about 1 yard less in ten shots; 4 less to 2 more would fit." */
function trendWords(
  metric: MetricFindings,
  drift: NonNullable<MetricFindings['drift']>,
  telling: Telling,
): string {
  const unit = unitFor(metric.id, telling.system);
  const [slope, low, high] = [drift.slope, ...drift.ci].map((value) =>
    toReader(value * stretch, metric.id, telling.system),
  );
  const step = stepFor(unit, ((high ?? 0) - (low ?? 0)) / 2);
  const say = (value: number, withWord: boolean): string => {
    const size = printAt(Math.abs(value), step);
    return `${withWord ? withUnit(size, unit) : size} ${value < 0 ? 'less' : 'more'}`;
  };
  return `Trend: about ${say(slope ?? 0, true)} in ten shots; ${say(low ?? 0, false)} to ${say(high ?? 0, false)} would fit.`;
}

function table(metric: MetricFindings, session: Session, telling: Telling): Table {
  const unit = unitFor(metric.id, telling.system);
  const sign = shortUnit(unit);
  return {
    caption:
      session.shots.length > mostDrawn
        ? 'The shots drawn, in the order they were hit'
        : 'Every shot in the order it was hit',
    head: [
      'Shot',
      capitalised(telling.noun),
      capitalised(sign === '' ? metrics[metric.id].name : `${metrics[metric.id].name} (${sign})`),
      'Left out',
    ],
    rows: drawnShots(session).map((shot) => {
      const value = shot.values[metric.id];
      return [
        String(shot.order),
        telling.nameOf(shot.contender),
        typeof value === 'number'
          ? formatNumber(
              toReader(value, metric.id, telling.system),
              finerStep(unit, stepFor(unit, null)).decimals,
            )
          : 'no reading',
        shot.excluded === null ? 'no' : 'yes',
      ];
    }),
  };
}
