import type { MetricId } from '../trade/metrics.ts';

/** Where a figure stands: `answer` and `shots` on the report, `swing`, `golfers` and `spread` on its details, `pairs` on the page of a pair. */
type FigureSection = 'answer' | 'shots' | 'swing' | 'golfers' | 'spread' | 'pairs';

/** The pages that show figures. */
type FigurePage = 'report' | 'details' | 'pair';

const pages: Readonly<Record<FigureSection, FigurePage>> = {
  answer: 'report',
  shots: 'report',
  swing: 'details',
  golfers: 'details',
  spread: 'details',
  pairs: 'pair',
};

/** What the findings must hold before a chart may stand without its page. */
export type OfferNeed = 'spread-told-apart' | 'part-named' | 'luck-agrees-with-answer';

interface FigureTraits {
  /** Heading above the chart, unless it holds a number or a unit; a narrative refers to it by this. */
  readonly question: string;
  readonly section: FigureSection;
  /** Whether each main measure has its own; else the report has one. */
  readonly each: 'metric' | 'report';
  /** Whether a reader takes an answer from it: the caution that weighs on the answer then stands with it. */
  readonly answering: boolean;
  /** Whether a flight model's numbers are in it. */
  readonly modelled: boolean;
  /** Null where it may always leave the page. */
  readonly offeredWith: OfferNeed | null;
  /** Of a chart of the report: the measures that it shows. */
  readonly measures: readonly MetricId[];
  /** Whether its marks are shots, each with these measures or the one that it is about. */
  readonly ofShots: boolean;
  /** Whether a phone folds it. */
  readonly folded: boolean;
}

/** Every chart there is, in the order of the page. */
export const figureTraits = {
  apart: chart('How far apart?', 'answer', { each: 'metric', answering: true }),
  shots: chart('All the shots', 'answer', { each: 'metric', ofShots: true }),
  landing: chart('Where they landed', 'shots', { measures: ['carry', 'side'], ofShots: true, folded: true }),
  delivery: chart('Was it the same swing?', 'swing'),
  order: chart('Shots in order', 'swing', { each: 'metric', ofShots: true }),
  yards: chart('Where do the yards come from?', 'swing', {
    answering: true,
    modelled: true,
    offeredWith: 'part-named',
  }),
  'launch-and-spin': chart('Launch and spin at this ball speed', 'swing', {
    modelled: true,
    measures: ['launch_angle', 'spin_rate'],
    ofShots: true,
  }),
  hitters: chart('Who gained?', 'golfers', { each: 'metric', answering: true }),
  luck: chart('How large a difference does chance make?', 'spread', {
    each: 'metric',
    answering: true,
    offeredWith: 'luck-agrees-with-answer',
  }),
  spread: chart('Which is more consistent?', 'spread', {
    offeredWith: 'spread-told-apart',
    measures: ['carry', 'side'],
  }),
  'with-and-without': chart('Did leaving shots out change it?', 'spread', { each: 'metric' }),
  meetings: chart('How far apart, report by report?', 'pairs', { answering: true }),
} as const satisfies Readonly<Record<string, FigureTraits>>;

function chart(
  question: string,
  section: FigureSection,
  traits: Partial<Omit<FigureTraits, 'question' | 'section'>> = {},
): FigureTraits {
  return {
    question,
    section,
    each: 'report',
    answering: false,
    modelled: false,
    offeredWith: null,
    measures: [],
    ofShots: false,
    folded: false,
    ...traits,
  };
}

export type ChartKind = keyof typeof figureTraits;

/** Charts of a report; those of a pair's page stand on no report. */
export type ReportChart = Exclude<ChartKind, 'meetings'>;

type Hyphened<Id extends string> = Id extends `${infer First}_${infer Rest}`
  ? `${First}-${Hyphened<Rest>}`
  : Id;

/** Unique on a page: a chart of the first main measure by its kind alone, of another with that measure's name. */
export type FigureId = ReportChart | `${ReportChart}-${Hyphened<MetricId>}` | `meetings-${number}`;

const isReportChart = (kind: string): kind is ReportChart => kind !== 'meetings' && kind in figureTraits;

/** The page on which a chart stands. */
export const pageOf = (kind: ChartKind): FigurePage => pages[figureTraits[kind].section];

/** The charts of a report, in the order of the page. */
export const reportCharts: readonly ReportChart[] = Object.keys(figureTraits).filter(isReportChart);

/** The id of a chart of the first main measure or the report (null), or of another measure. */
export function figureId(kind: ReportChart, metric: MetricId | null): FigureId {
  return metric === null ? kind : `${kind}-${hyphened(metric)}`;
}

function hyphened<Id extends MetricId>(id: Id): Hyphened<Id>;
function hyphened(id: string): string {
  return id.replaceAll('_', '-');
}
