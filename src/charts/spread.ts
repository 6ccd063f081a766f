import type { ContenderSummary, MetricFindings } from '../findings/findings.ts';
import { spreadLimits } from '../prose/english/charts/ranges.ts';
import {
  noSpreadColumns,
  spreadFinding,
  spreadRowWords,
  spreadWords,
  tooFewToScatter,
} from '../prose/english/charts/spread.ts';
import { saySpread } from '../prose/english/spread.ts';
import { printingOf, printSize, type Printing } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import { spreadOf } from '../prose/spread.ts';
import type { Telling } from '../prose/telling.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { axisBelow } from './axisBelow.ts';
import type { Shown } from './chart.ts';
import { drawnSize, sizeColumn, wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import { contenderMark } from './contenderMarks.ts';
import { contenderName, type ContenderName } from './contenderName.ts';
import { flowKey } from './flowKey.ts';
import { barItem, ringItem } from './gapKey.ts';
import { intervalRow, refuseRow, rowColumns, type Interval, type IntervalRow } from './intervalRows.ts';
import { absentChart, drawnChart, type ChartWords, type MadeChart } from './madeChart.ts';
import { roundScale } from './roundScale.ts';
import { rowHeading } from './rowHeadings.ts';

const shownMetrics: readonly MetricId[] = ['carry', 'side'];

/** *Which is more consistent?*: the standard deviation of carry and side with each contender, with its wide range. */
export function makeSpread({ telling }: Shown): MadeChart {
  const { findings } = telling;
  const about = { of: 'report' } as const;
  const shown = shownMetrics.flatMap((id) => findings.metrics.find((metric) => metric.id === id) ?? []);
  if (shown.length === 0 || findings.design.hitters !== 1) return absentChart({ about }, noSpreadColumns);
  const groups = shown.map((metric) => ({ metric, ...groupOf(metric, telling) }));
  const { tableCaption, tableHead, ...words } = spreadWords(
    shown,
    groups.map(({ heading }) => heading),
    telling,
  );
  return drawSpread({
    about,
    ...words,
    finding: spreadFinding(
      shown.map((metric) => spreadOf(metric, findings)),
      telling,
    ),
    description: groups
      .flatMap(({ rows, heading }) => [
        heading,
        ...rows.map(
          ({ contender, figure, words: said }) =>
            `${contender.label}: ${figure === '' ? '' : `${figure}, `}${said}.`,
        ),
      ])
      .join(' '),
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: groups.flatMap(({ metric, rows }) =>
        rows.map(({ contender, figure, range }) => [
          contender.label,
          metrics[metric.id].name,
          figure === '' ? '–' : figure,
          ...(range ?? ['–', '–']),
        ]),
      ),
    },
    groups,
  });
}

interface PrintedRow extends SpreadRow {
  /** Both limits as printed. */
  readonly range: readonly [string, string] | null;
}

function groupOf(
  metric: MetricFindings,
  telling: Telling,
): { readonly heading: string; readonly rows: readonly PrintedRow[] } {
  const printing = printingOf(metric, telling);
  return {
    heading: saySpread(spreadOf(metric, telling.findings), telling),
    rows: metric.byContender.map((summary) => rowOf(summary, metric.id, printing, telling)),
  };
}

function rowOf(
  { id, sd, sdCi, n }: ContenderSummary,
  metric: MetricId,
  printing: Printing,
  telling: Telling,
): PrintedRow {
  const read = (value: number): number => toReader(value, metric, telling.system);
  const range = sdCi === null ? null : spreadLimits(sdCi, printing);
  return {
    contender: contenderName(id, telling),
    spread: sd === null ? null : read(sd),
    interval: sd === null || sdCi === null ? null : { low: read(sdCi[0]), high: read(sdCi[1]) },
    figure: sd === null ? '' : printSize(sd, printing),
    words: spreadRowWords(n, sd === null ? null : range),
    range,
  };
}

/** The standard deviation of each measure with each contender. */
export function spreadNumbers({ telling }: Shown): ChartNumbers {
  const { findings, system } = telling;
  const shown = findings.metrics.filter(({ id }) => shownMetrics.includes(id));
  const of = shown[0]?.id ?? 'carry';
  return {
    columns: [
      wordsColumn('Label', `The ${telling.noun} hit.`),
      wordsColumn('Of', 'The measure that scatters.'),
      sizeColumn('Standard deviation', of, system, 'Of the counted shots.'),
      sizeColumn('From', of, system, 'Where its likely range begins.'),
      sizeColumn('To', of, system, 'Where its likely range ends.'),
    ],
    rows: shown.flatMap(({ id: metric, byContender }) =>
      byContender.map(({ id, sd, sdCi }) => [
        telling.nameOf(id),
        metrics[metric].name,
        ...[sd, sdCi?.[0], sdCi?.[1]].map((value) => drawnSize(value, metric, system)),
      ]),
    ),
  };
}

/** How far the shots of one contender scatter in one direction, in the unit the reader sees. */
export interface SpreadRow {
  readonly contender: ContenderName;
  /** Standard deviation; null where shots are too few for one. */
  readonly spread: number | null;
  /** Its likely range; null where shots are too few to say. */
  readonly interval: Interval | null;
  /** The spread as printed: "8". May be empty. */
  readonly figure: string;
  /** "likely 6 to 12", "five shots are too few to say". */
  readonly words: string;
}

/** One direction: carry, or side. */
interface SpreadGroup {
  /** "Carry: alike or tighter, cannot tell." */
  readonly heading: string;
  /** In the order contenders are listed. */
  readonly rows: readonly SpreadRow[];
}

export interface SpreadInput extends ChartWords {
  readonly groups: readonly SpreadGroup[];
  /** What ring and bar are called. */
  readonly key: { readonly ring: string; readonly bar: string };
  /** What the scale measures: "Standard deviation in yards". */
  readonly axis: string;
}

/**
 * A heading and rows for each direction, all on one scale from 0. Absent without a spread. Throws on broken or negative spreads
 * and on a seventh contender.
 */
export function drawSpread(input: SpreadInput): MadeChart {
  const { groups, key, axis } = input;
  const all = groups.flatMap((group) => group.rows);
  for (const row of all) refuse(row);
  const drawn = all.filter(({ spread }) => spread !== null).length;
  if (drawn === 0) return absentChart(input, tooFewToScatter);
  return drawnChart(input, { drawn, recorded: all.length, counted: 'spreads' }, (layout) => {
    const rows = all.map(asIntervalRow);
    const columns = rowColumns(rows, layout);
    const values = rows.flatMap(({ estimate, interval }) => [estimate ?? 0, interval?.high ?? 0]);
    const scale = roundScale([0, ...values], columns.track, layout);
    const style = { columns, place: scale.place, ticks: scale.ticks, matters: null };
    const { from, to } = columns.track;
    return {
      parts: [
        (top) => flowKey([ringItem(key.ring), barItem(key.bar)], layout, top),
        ...groups.flatMap((group) => [
          (top: number) => rowHeading(group.heading, layout, top),
          ...group.rows.map((row) => (top: number) => intervalRow(asIntervalRow(row), style, layout, top)),
        ]),
        (top) => axisBelow(axis, scale.ticks, layout, top, { from: from - 10, to: to + 10 }),
      ],
    };
  });
}

function refuse(row: SpreadRow): void {
  contenderMark(row.contender.index);
  refuseRow(asIntervalRow(row));
  if ((row.interval?.low ?? row.spread ?? 0) < 0)
    throw new Error(`${row.contender.label}: a spread cannot be under 0.`);
}

const asIntervalRow = ({ contender, spread, interval, figure, words }: SpreadRow): IntervalRow => ({
  name: contender.label,
  contender: contender.index,
  figure,
  words,
  printed: null,
  estimate: spread,
  interval,
  setOff: false,
  open: false,
});
