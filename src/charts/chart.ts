import type { MetricFindings } from '../findings/findings.ts';
import type { Front } from '../intake/authored/front.ts';
import type { Session } from '../intake/session.ts';
import type { Telling } from '../prose/telling.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { ChartNumbers } from './chartNumbers.ts';
import type { MadeChart } from './madeChart.ts';

/** What charts are made from. */
export interface Shown {
  /** The main measure that it is about; of a chart of the report the first. */
  readonly metric: MetricFindings;
  readonly primaries: readonly MetricFindings[];
  readonly session: Session;
  /** Where a report says which club was hit. */
  readonly front: Pick<Front, 'title' | 'question' | 'varied' | 'held' | 'contenders'>;
  readonly telling: Telling;
}

/** Where a figure stands: `answer` and `shots` on the report, `swing`, `golfers` and `spread` on its details, `pairs` on the page of a pair. */
export type ChartSection = 'answer' | 'shots' | 'swing' | 'golfers' | 'spread' | 'pairs';

/** What the findings must hold before a chart may stand without its page. */
export type OfferNeed = 'spread-told-apart' | 'part-named' | 'luck-agrees-with-answer';

/** What is known of a chart before it is made. */
export interface ChartTraits {
  /** Heading above the chart, unless it holds a number or a unit; a narrative refers to it by this. */
  readonly question: string;
  readonly section: ChartSection;
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
  /** Whether a phone folds it. */
  readonly folded: boolean;
}

/** A chart of a report. */
interface Chart extends ChartTraits {
  readonly make: (shown: Shown) => MadeChart;
  /**
   * What it draws as numbers, which are finer than what is printed of them; `shots` where its marks are shots, each with its
   * measures or the one that it is about.
   */
  readonly numbers: 'shots' | ((shown: Shown) => ChartNumbers);
}

/** Few charts have any of these. */
const usual = {
  each: 'report',
  answering: false,
  modelled: false,
  offeredWith: null,
  measures: [],
  folded: false,
} as const satisfies Partial<ChartTraits>;

/** What must be said of a chart, and whatever else is not as usual. */
type Row<Kind extends ChartTraits> = Omit<Kind, keyof typeof usual> & Partial<Kind>;

export const chart = (row: Row<Chart>): Chart => ({ ...usual, ...row });

/** A chart that stands on no report, and is made elsewhere. */
export const chartElsewhere = (row: Row<ChartTraits>): ChartTraits => ({ ...usual, ...row });
