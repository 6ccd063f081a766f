import { capitalised } from '../prose/words.ts';
import type { Findings } from '../findings/findings.ts';
import { metrics } from '../trade/metrics.ts';
import type { About } from './about.ts';
import { figureId, figureTraits, type ChartKind, type FigureId, type ReportChart } from './figureTraits.ts';
import type { Variant } from './layout.ts';

/** A chart's numbers in rows; the first cell of a row heads it. */
export interface Table {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Which chart it is, what it is about, and the heading above it. */
export interface FigureHead {
  /** Unique on the page; also the stem of every id inside the chart. */
  readonly id: FigureId;
  readonly chart: ChartKind;
  readonly about: About;
  readonly question: string;
}

/** The words that go with every chart, in sentences where they are lists. */
export interface FigureWords extends FigureHead {
  /** The heading: what the chart shows, in a clause without a full stop; the question is the small line over it. */
  readonly finding: string;
  /** What the chart is of, measure and things named: "Carry of every shot with Alder and Birch". */
  readonly subject: string;
  /** Caption: what was found, and signs that a picture may leave unsaid where there is little room. */
  readonly found: readonly string[];
  /** Caption: what those signs mean without which the chart would say something else. */
  readonly signs: readonly string[];
  /** Caption: what holds only with the page around it. */
  readonly onPage?: string;
  /** What the chart itself shows where that is not the answer, to stand in a caption; none where it would favour one. */
  readonly shows?: string;
  /** Long description in sentences, the trend included. */
  readonly description: string;
  /** What the table holds, by name: "carry differences". */
  readonly numbers: string;
  readonly table: Table;
}

/** How many of the things that could be shown the chart shows. */
interface Counts {
  readonly drawn: number;
  readonly recorded: number;
  readonly counted:
    'shots' | 'pairs' | 'comparisons' | 'spreads' | 'golfers' | 'reports' | 'parts' | 'averages';
}

export interface DrawnFigure extends FigureWords, Counts {
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
  const { question, each } = figureTraits[chart];
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
export const imageName = ({ question, subject }: Pick<FigureWords, 'question' | 'subject'>): string =>
  /[?.!]$/.test(question) ? `${question} ${subject}` : `${question}: ${subject}`;

/** The caption as its page prints it. */
export const captionOf = ({ found, signs, onPage }: FigureWords): string =>
  [...found, ...signs, ...(onPage === undefined ? [] : [onPage])].join(' ');

export const absentFigure = ({ id, chart, about, question }: FigureHead, why: string): AbsentFigure => ({
  kind: 'absent',
  id,
  chart,
  about,
  question,
  why,
});

/** A figure with its words and both drawings; the words alone are kept of what it was drawn from. */
export function drawnFigure(
  {
    id,
    chart,
    about,
    question,
    finding,
    subject,
    found,
    signs,
    onPage,
    shows,
    description,
    numbers,
    table,
  }: FigureWords,
  counts: Counts,
  draw: (variant: Variant) => string,
): DrawnFigure {
  return {
    kind: 'drawn',
    ...{ id, chart, about, question, finding, subject, found, signs, description, numbers, table },
    ...(onPage === undefined ? {} : { onPage }),
    ...(shows === undefined ? {} : { shows }),
    ...counts,
    svg: { wide: draw('wide'), narrow: draw('narrow') },
  };
}
