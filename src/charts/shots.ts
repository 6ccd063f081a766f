import type { ContenderSummary, MetricFindings } from '../findings/findings.ts';
import {
  averageWords,
  axisOf,
  golferStrip,
  leftOutWord,
  shotsFinding,
  shotsWords,
  shotTableWords,
  stripInWords,
  stripNumbers,
} from '../prose/english/charts/shots.ts';
import { averageLimits, printAverage, printingOf, printReading, printSize } from '../prose/printSteps.ts';
import { toReader, unitsIn, withUnit } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { sentence } from '../prose/words.ts';
import type { Shown } from './chart.ts';
import { contenderName } from './contenderName.ts';
import { drawnShots, drawnWords } from './drawnShots.ts';
import { golferSummaries } from './golferSummaries.ts';
import type { MadeChart } from './madeChart.ts';
import { drawShots } from './shotsDrawing.ts';
import type { ShotsStrip } from './shotsStrip.ts';
import type { Table } from './table.ts';

/** The most strips that golfers have of their own; beyond, only the table tells them apart. */
const mostStrips = 8;

/** *All the shots*: one mark a shot, left-out ones hollow, with each contender's average; of several golfers a strip each where they fit. */
export function makeShots(shown: Shown): MadeChart {
  const { metric, session, telling } = shown;
  const { findings } = telling;
  const byGolfer = findings.design.hitters > 1 ? golferSummaries(metric.id, session, findings) : [];
  const apart = byGolfer.length > 0 && byGolfer.length <= mostStrips;
  const strips = apart
    ? byGolfer.map(({ golfer, summary }) => stripOf(summary, golfer, shown))
    : metric.byContender.map((summary) => stripOf(summary, null, shown));
  const table = shotTable(metric, telling);
  return drawShots({
    about: { of: 'metric', metric: metric.id },
    ...shotsWords(
      metric,
      byGolfer.length === 0 || apart ? 'apart' : 'together',
      strips.some(({ average }) => average?.interval != null),
      telling,
    ),
    finding: shotsFinding(
      {
        drawn: strips.reduce((sum, { shots }) => sum + shots.length, 0),
        recorded: session.shots.length,
        leftOut: session.shots.filter(({ excluded }) => excluded !== null).length,
      },
      metric.id,
      telling,
    ),
    found: drawnWords(session),
    description: strips
      .map(({ contender, numbers, average }) =>
        sentence(stripInWords(contender.label, numbers, average?.text ?? null)),
      )
      .join(' '),
    table: {
      ...table,
      rows: [
        ...table.rows,
        ...byGolfer.map(({ golfer, summary, leftOut }) =>
          summaryRow(
            { name: stripName(summary.id, golfer, telling), leftOut: String(leftOut), summary },
            metric,
            telling,
          ),
        ),
      ],
    },
    strips,
    roundIn: unitsIn(telling.system, metric.id, telling.scalesIn),
    axis: axisOf(metric, telling),
    leftOut: leftOutWord,
    recorded: drawnShots(session).length,
  });
}

const stripName = (contender: string, golfer: string | null, telling: Telling): string =>
  golfer === null
    ? telling.nameOf(contender)
    : golferStrip(telling.nameOf(contender), telling.golfer(golfer, telling.system));

function stripOf(
  { id, n, mean, ci, min, max }: ContenderSummary,
  golfer: string | null,
  { metric, session, telling }: Shown,
): ShotsStrip {
  const printing = printingOf(metric, telling);
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const print = (value: number): string => printAverage(value, printing);
  const limits = ci === null ? null : averageLimits(ci, printing);
  return {
    contender: { ...contenderName(id, telling), label: stripName(id, golfer, telling) },
    shots: drawnShots(session).flatMap(({ contender, hitter, values, excluded }) => {
      const value = values[metric.id];
      return contender === id && (golfer === null || hitter === golfer) && typeof value === 'number'
        ? [{ value: read(value), leftOut: excluded !== null }]
        : [];
    }),
    numbers: stripNumbers(
      n,
      min === null || max === null
        ? null
        : { least: printReading(min, printing), most: withUnit(printReading(max, printing), printing.unit) },
    ),
    average:
      mean === null
        ? null
        : {
            value: read(mean),
            text: limits === null ? print(mean) : averageWords(print(mean), limits),
            interval: ci === null ? null : { low: read(ci[0]), high: read(ci[1]) },
          },
  };
}

/** Summary figures of each contender. */
export function shotTable(metric: MetricFindings, telling: Telling): Table {
  return {
    ...shotTableWords(metric, telling),
    rows: metric.byContender.map((summary) =>
      summaryRow(
        {
          name: telling.nameOf(summary.id),
          leftOut: String(telling.findings.contenders.find(({ id }) => id === summary.id)?.excluded ?? '–'),
          summary,
        },
        metric,
        telling,
      ),
    ),
  };
}

function summaryRow(
  {
    name,
    leftOut,
    summary: { n, mean, ci, sd, median, min, max },
  }: { readonly name: string; readonly leftOut: string; readonly summary: ContenderSummary },
  metric: MetricFindings,
  telling: Telling,
): readonly string[] {
  const printing = printingOf(metric, telling);
  const print = (value: number | null, as: typeof printSize): string =>
    value === null ? '–' : as(value, printing);
  return [
    name,
    String(n),
    leftOut,
    print(mean, printAverage),
    ...(ci === null ? ['–', '–'] : averageLimits(ci, printing)),
    print(sd, printSize),
    print(median, printAverage),
    print(min, printReading),
    print(max, printReading),
  ];
}
