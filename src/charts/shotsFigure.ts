import type { ContenderSummary, MetricFindings } from '../findings/findings.ts';
import type { Session } from '../intake/session.ts';
import { shotsFinding } from '../prose/english/charts/finding.ts';
import {
  axisOf,
  leftOutWord,
  shotsWords,
  shotTableWords,
  stripNumbers,
} from '../prose/english/charts/shots.ts';
import {
  averageLimits,
  printAverage,
  printingOf,
  printReading,
  printSize,
  type Printing,
} from '../prose/printSteps.ts';
import { toReader, unitsIn, withUnit } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { sentence } from '../prose/words.ts';
import { contenderName } from './contenderName.ts';
import { drawnShots, drawnWords } from './drawnShots.ts';
import { figureHead, type Figure, type Table } from './figure.ts';
import { shotsChart } from './shots.ts';
import type { ShotsStrip } from './shotsInput.ts';

/** *All the shots*: one mark a shot, left-out ones hollow, with each contender's average. */
export function shotsFigure(metric: MetricFindings, session: Session, telling: Telling): Figure {
  const printing = printingOf(metric, telling);
  const strips = metric.byContender.map((summary) => stripOf(summary, metric, session, printing, telling));
  return shotsChart({
    ...figureHead('shots', { of: 'metric', metric: metric.id }, telling.findings),
    ...shotsWords(metric, telling),
    finding: shotsFinding(
      {
        drawn: strips.reduce((sum, { shots }) => sum + shots.length, 0),
        recorded: session.shots.length,
        leftOut: session.shots.filter(({ excluded }) => excluded !== null).length,
      },
      telling,
    ),
    found: drawnWords(session),
    description: strips.map(({ contender, numbers }) => sentence(`${contender.label}: ${numbers}`)).join(' '),
    table: shotTable(metric, telling),
    strips,
    roundIn: unitsIn(telling.system, metric.id, telling.scalesIn),
    axis: axisOf(metric, telling),
    leftOut: leftOutWord,
    recorded: drawnShots(session).length,
  });
}

function stripOf(
  { id, n, mean, ci, min, max }: ContenderSummary,
  metric: MetricFindings,
  session: Session,
  printing: Printing,
  telling: Telling,
): ShotsStrip {
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const print = (value: number): string => printAverage(value, printing);
  return {
    contender: contenderName(id, telling),
    shots: drawnShots(session).flatMap(({ contender, values, excluded }) => {
      const value = values[metric.id];
      return contender === id && typeof value === 'number'
        ? [{ value: read(value), leftOut: excluded !== null }]
        : [];
    }),
    numbers: stripNumbers(
      n,
      min === null || max === null || mean === null
        ? null
        : {
            least: printReading(min, printing),
            most: withUnit(printReading(max, printing), printing.unit),
            average: print(mean),
          },
    ),
    average:
      mean === null
        ? null
        : {
            value: read(mean),
            text: print(mean),
            interval: ci === null ? null : { low: read(ci[0]), high: read(ci[1]) },
          },
  };
}

/** Summary figures of each contender. */
export function shotTable(metric: MetricFindings, telling: Telling): Table {
  const printing = printingOf(metric, telling);
  const print = (value: number | null, as: typeof printSize): string =>
    value === null ? '–' : as(value, printing);
  return {
    ...shotTableWords(metric, telling),
    rows: metric.byContender.map(({ id, n, mean, ci, sd, median, min, max }) => [
      telling.nameOf(id),
      String(n),
      String(telling.findings.contenders.find((contender) => contender.id === id)?.excluded ?? '–'),
      print(mean, printAverage),
      ...(ci === null ? ['–', '–'] : averageLimits(ci, printing)),
      print(sd, printSize),
      print(median, printAverage),
      print(min, printReading),
      print(max, printReading),
    ]),
  };
}
