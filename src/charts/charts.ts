import type { MetricId } from '../trade/metrics.ts';
import { apartNumbers, makeApart } from './apart.ts';
import { chart, chartElsewhere, type ChartSection, type ChartTraits } from './chart.ts';
import { deliveryNumbers, makeDelivery } from './delivery.ts';
import { hittersNumbers, makeHitters } from './hitters.ts';
import { makeLanding } from './landing.ts';
import { makeLaunch } from './launch.ts';
import { luckNumbers, makeLuck } from './luck.ts';
import { makeOrder } from './order.ts';
import { makeShots } from './shots.ts';
import { makeSpread, spreadNumbers } from './spread.ts';
import { makeWithAndWithout, withAndWithoutNumbers } from './withAndWithout.ts';
import { makeYards, yardsNumbers } from './yards.ts';

/** Every chart there is, in the order of the page. Nothing is drawn before somebody makes one. */
export const charts = {
  apart: chart({
    question: 'How far apart?',
    section: 'answer',
    each: 'metric',
    answering: true,
    make: makeApart,
    numbers: apartNumbers,
  }),
  shots: chart({
    question: 'All the shots',
    section: 'answer',
    each: 'metric',
    make: makeShots,
    numbers: 'shots',
  }),
  landing: chart({
    question: 'Where they landed',
    section: 'shots',
    measures: ['carry', 'side'],
    folded: true,
    make: makeLanding,
    numbers: 'shots',
  }),
  delivery: chart({
    question: 'Was it the same swing?',
    section: 'swing',
    make: makeDelivery,
    numbers: deliveryNumbers,
  }),
  order: chart({
    question: 'Shots in order',
    section: 'swing',
    each: 'metric',
    make: makeOrder,
    numbers: 'shots',
  }),
  yards: chart({
    question: 'Where do the yards come from?',
    section: 'swing',
    answering: true,
    modelled: true,
    offeredWith: 'part-named',
    make: makeYards,
    numbers: yardsNumbers,
  }),
  'launch-and-spin': chart({
    question: 'Launch and spin at this ball speed',
    section: 'swing',
    modelled: true,
    measures: ['launch_angle', 'spin_rate'],
    make: makeLaunch,
    numbers: 'shots',
  }),
  hitters: chart({
    question: 'Who gained?',
    section: 'golfers',
    each: 'metric',
    answering: true,
    make: makeHitters,
    numbers: hittersNumbers,
  }),
  luck: chart({
    question: 'How large a difference does chance make?',
    section: 'spread',
    each: 'metric',
    answering: true,
    offeredWith: 'luck-agrees-with-answer',
    make: makeLuck,
    numbers: luckNumbers,
  }),
  spread: chart({
    question: 'Which is more consistent?',
    section: 'spread',
    offeredWith: 'spread-told-apart',
    measures: ['carry', 'side'],
    make: makeSpread,
    numbers: spreadNumbers,
  }),
  'with-and-without': chart({
    question: 'Did leaving shots out change it?',
    section: 'spread',
    each: 'metric',
    make: makeWithAndWithout,
    numbers: withAndWithoutNumbers,
  }),
  // Made in kit/meetingsFigure.ts, of several reports.
  meetings: chartElsewhere({
    question: 'How far apart, report by report?',
    section: 'pairs',
    answering: true,
  }),
} as const satisfies Readonly<Record<string, ChartTraits>>;

export type ChartKind = keyof typeof charts;

/** Charts of a report; those of a pair's page stand on no report. */
export type ReportChart = Exclude<ChartKind, 'meetings'>;

type Hyphened<Id extends string> = Id extends `${infer First}_${infer Rest}`
  ? `${First}-${Hyphened<Rest>}`
  : Id;

/** Unique on a page: a chart of the first main measure by its kind alone, of another with that measure's name. */
export type FigureId = ReportChart | `${ReportChart}-${Hyphened<MetricId>}` | `meetings-${number}`;

const isReportChart = (kind: string): kind is ReportChart => kind !== 'meetings' && kind in charts;

/** The pages that show figures. */
type FigurePage = 'report' | 'details' | 'pair';

const pages: Readonly<Record<ChartSection, FigurePage>> = {
  answer: 'report',
  shots: 'report',
  swing: 'details',
  golfers: 'details',
  spread: 'details',
  pairs: 'pair',
};

/** The page on which a chart stands. */
export const pageOf = (kind: ChartKind): FigurePage => pages[charts[kind].section];

/** The charts of a report, in the order of the page. */
export const reportCharts: readonly ReportChart[] = Object.keys(charts).filter(isReportChart);

/** The id of a chart of the first main measure or the report (null), or of another measure. */
export function figureId(kind: ReportChart, metric: MetricId | null): FigureId {
  return metric === null ? kind : `${kind}-${hyphened(metric)}`;
}

function hyphened<Id extends MetricId>(id: Id): Hyphened<Id>;
function hyphened(id: string): string {
  return id.replaceAll('_', '-');
}
