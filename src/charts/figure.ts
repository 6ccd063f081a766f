import { capitalised } from '../prose/words.ts';
import type { Findings } from '../findings/findings.ts';
import { metrics } from '../trade/metrics.ts';
import type { About } from './about.ts';
import { charts, figureId, type ChartKind, type FigureId, type ReportChart } from './charts.ts';
import type { ChartWords, Counts } from './madeChart.ts';

/** Which chart it is, what it is about, and the heading above it. */
export interface FigureHead {
  /** Unique on the page; also the stem of every id inside the chart. */
  readonly id: FigureId;
  readonly chart: ChartKind;
  readonly about: About;
  readonly question: string;
}

export interface DrawnFigure extends FigureHead, Omit<ChartWords, 'question'>, Counts {
  readonly kind: 'drawn';
  /** `wide` is 720 px, `narrow` 288 px; the page shows one. */
  readonly svg: { readonly wide: string; readonly narrow: string };
}

interface AbsentFigure extends FigureHead {
  readonly kind: 'absent';
  readonly why: string;
}

/** A chart as a page needs it, or why there is none. */
export type Figure = DrawnFigure | AbsentFigure;

/** The head of a report's chart; with a second main measure its question names the measure. */
export function figureHead(chart: ReportChart, about: About, findings: Findings): FigureHead {
  const { question, each } = charts[chart];
  const [first, ...others] = findings.metrics.filter(({ role }) => role === 'primary');
  if (about.of === 'report' || each === 'report' || others.length === 0)
    return { id: chart, chart, about, question };
  const { name } = metrics[about.metric];
  const named = question.endsWith('?') ? `${question} ${capitalised(name)}` : `${question}: ${name}`;
  return {
    id: figureId(chart, about.metric === first?.id ? null : about.metric),
    chart,
    about,
    question: named,
  };
}

/** The accessible name of the image. */
export const imageName = ({ question, subject }: Pick<DrawnFigure, 'question' | 'subject'>): string =>
  /[?.!]$/.test(question) ? `${question} ${subject}` : `${question}: ${subject}`;

/** The caption as its page prints it. */
export const captionOf = ({
  found,
  signs,
  onPage,
}: Pick<DrawnFigure, 'found' | 'signs' | 'onPage'>): string =>
  [...found, ...signs, ...(onPage === undefined ? [] : [onPage])].join(' ');
