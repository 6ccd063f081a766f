import type { MetricFindings } from '../findings/findings.ts';
import type { Session } from '../intake/session.ts';
import { metrics } from '../trade/metrics.ts';
import { formatNumber, printAt, stepFor } from '../prose/numbers.ts';
import { shortUnit, toReader, unitFor, unitsIn, unitWord, withUnit } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised, counted, sentence } from '../prose/words.ts';
import { allShotsChart } from './allShots.ts';
import { drawnShots, drawnWords } from './drawnShots.ts';
import type { Average, ShotsStrip } from './allShotsInput.ts';
import type { Figure, Table } from './figure.ts';
import type { FigurePlace } from './figurePlace.ts';

/** *All the shots*: one mark a shot, left-out ones hollow, with each contender's average. */
export function shotsFigure(
  metric: MetricFindings,
  session: Session,
  telling: Telling,
  { id, named }: FigurePlace,
): Figure {
  const { name } = metrics[metric.id];
  const unit = unitFor(metric.id, telling.system);
  const strips = metric.byContender.map((_, index) => strip(index, metric, session, telling));
  return allShotsChart({
    id,
    question: named ? `All the shots: ${name}` : 'All the shots',
    subject: `${capitalised(name)} of every shot with each ${telling.noun}`,
    finding: caption(metric, session, telling),
    description: strips.map(({ contender, numbers }) => sentence(`${contender.label}: ${numbers}`)).join(' '),
    table: {
      ...shotTable(metric, session, telling),
      caption: `The shots in figures: ${name}${inBrackets(shortUnit(unit))}`,
    },
    strips,
    roundIn: unitsIn(telling.system, metric.id, telling.scalesIn),
    axis: capitalised(unitWord(unit) === '' ? name : `${name} in ${unitWord(unit)}`),
    leftOut: 'left out',
    recorded: session.shots.length,
  });
}

function strip(index: number, metric: MetricFindings, session: Session, telling: Telling): ShotsStrip {
  const summary = metric.byContender[index];
  const id = summary?.id ?? '';
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const unit = unitFor(metric.id, telling.system);
  const step = stepFor(unit, summary?.ci == null ? null : read((summary.ci[1] - summary.ci[0]) / 2));
  const shots = drawnShots(session).flatMap(({ contender, values, excluded }) => {
    const value = values[metric.id];
    return contender === id && typeof value === 'number'
      ? [{ value: read(value), leftOut: excluded !== null }]
      : [];
  });
  const mean = summary?.mean ?? null;
  const average: Average | null =
    mean === null
      ? null
      : {
          value: read(mean),
          text: printAt(read(mean), step),
          interval: summary?.ci == null ? null : { low: read(summary.ci[0]), high: read(summary.ci[1]) },
        };
  const range =
    summary === undefined || summary.min === null || summary.max === null || average === null
      ? 'no reading'
      : `${printAt(read(summary.min), stepFor(unit, null))} to ${withUnit(printAt(read(summary.max), stepFor(unit, null)), unit)}, average ${average.text}`;
  return {
    contender: { label: telling.nameOf(id), index },
    shots,
    numbers: summary === undefined ? 'no reading' : `${counted(summary.n, 'shot')}, ${range}`,
    average,
  };
}

function caption(metric: MetricFindings, session: Session, telling: Telling): string {
  const leftOut = session.shots.filter(({ excluded }) => excluded !== null).length;
  const without = session.shots.filter(
    ({ excluded, values }) => excluded === null && typeof values[metric.id] !== 'number',
  ).length;
  const out =
    leftOut === 0
      ? 'None left out.'
      : `${capitalised(counted(leftOut, 'shot'))} left out, drawn hollow with a stroke through; the reasons are listed below.`;
  const missing =
    without === 0 ? '' : ` ${capitalised(counted(without, 'shot'))} had no reading and cannot be drawn.`;
  const bar =
    session.hitters.length === 1
      ? `; the bar shows which averages would fit its shots (95\u00a0%, each ${telling.noun} by itself)`
      : ', all golfers together, who differ among themselves';
  return `One mark is one shot. The ring is the average with each ${telling.noun}${bar}. ${out}${missing}${drawnWords(session)}`;
}

function inBrackets(sign: string): string {
  return sign === '' ? '' : ` (${sign})`;
}

/** Summary figures of each contender. */
export function shotTable(metric: MetricFindings, session: Session, telling: Telling): Table {
  const unit = unitFor(metric.id, telling.system);
  return {
    caption: `${capitalised(metrics[metric.id].name)}${inBrackets(shortUnit(unit))} with each ${telling.noun}`,
    head: [
      capitalised(telling.noun),
      'Shots',
      'Left out',
      'Average',
      'Would fit, from',
      'to',
      'Spread (sd)',
      'Median',
      'Lowest',
      'Highest',
    ],
    rows: metric.byContender.map((summary) => {
      const halfWidth =
        summary.ci === null ? null : toReader((summary.ci[1] - summary.ci[0]) / 2, metric.id, telling.system);
      const step = stepFor(unit, halfWidth);
      // One digit finer than the average is good to, never finer than the file.
      const decimals = step.decimals + (step.step >= 1 && unit !== 'rpm' ? 1 : 0);
      const print = (value: number | null): string =>
        value === null ? '–' : formatNumber(toReader(value, metric.id, telling.system), decimals);
      const excluded = session.shots.filter(
        (shot) => shot.contender === summary.id && shot.excluded !== null,
      );
      return [
        telling.nameOf(summary.id),
        String(summary.n),
        String(excluded.length),
        print(summary.mean),
        print(summary.ci?.[0] ?? null),
        print(summary.ci?.[1] ?? null),
        print(summary.sd),
        print(summary.median),
        print(summary.min),
        print(summary.max),
      ];
    }),
  };
}
