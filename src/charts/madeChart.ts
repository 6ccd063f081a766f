import type { About } from './about.ts';
import type { Layout } from './layout.ts';
import type { Mark } from './mark.ts';
import type { Part } from './part.ts';
import type { Table } from './table.ts';

/** The words that go with every chart, in sentences where they are lists. */
export interface ChartWords {
  readonly about: About;
  /** Its question where that holds a unit of the reader, and is no part of the picture's name; else that of its row in `charts`. */
  readonly question?: string;
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

/** What goes with a chart whose marks are shots. */
export interface ShotChartWords extends ChartWords {
  /** What a hollow mark with a stroke through says: "left out". */
  readonly leftOut: string;
  /** Shots recorded, those that the chart cannot place among them. */
  readonly recorded: number;
}

/** How many of the things that could be shown the chart shows. */
export interface Counts {
  readonly drawn: number;
  readonly recorded: number;
  readonly counted:
    'shots' | 'pairs' | 'comparisons' | 'spreads' | 'golfers' | 'reports' | 'parts' | 'averages';
}

/** What is drawn in one width. */
export interface ChartParts {
  /** Below one another, each told where its top is. */
  readonly parts: readonly ((top: number) => Part)[];
  /** What lies under all others, such as a hatching that parts refer to. */
  readonly behind?: readonly Mark[];
}

interface DrawableChart {
  readonly kind: 'drawn';
  readonly words: ChartWords;
  readonly counts: Counts;
  readonly draw: (layout: Layout) => ChartParts;
}

interface AbsentChart {
  readonly kind: 'absent';
  readonly about: About;
  readonly question?: string;
  readonly why: string;
}

/** A chart with its words, ready to be drawn and to be given its place on a page, or why there is none. */
export type MadeChart = DrawableChart | AbsentChart;

export const absentChart = (
  { about, question }: Pick<ChartWords, 'about' | 'question'>,
  why: string,
): MadeChart => ({ kind: 'absent', about, ...(question === undefined ? {} : { question }), why });

export const drawnChart = (
  words: ChartWords,
  counts: Counts,
  draw: (layout: Layout) => ChartParts,
): MadeChart => ({ kind: 'drawn', words, counts, draw });
