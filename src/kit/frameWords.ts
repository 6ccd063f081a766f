import type { DrawnFigure } from '../charts/figure.ts';
import { caveats } from './caveatStrip.ts';
import { wholeHeadline } from './headline.ts';
import type { Report } from './report.ts';
import { textOf, type SaidKind } from './said.ts';

/** What a frame says around its chart. */
export interface FrameWords {
  /** "Invented data. Corrected 2 April 2026."; empty for most. */
  readonly stamp: string;
  readonly headline: string;
  /** What its signs are, who hit, how the readings came about. */
  readonly about: string;
  /** What to keep in mind, and what the shop has to gain. */
  readonly weighing: string;
  /** Words of the link to the report. */
  readonly link: string;
}

export function frameWords(report: Report, figure: DrawnFigure): FrameWords {
  const told = caveats(report, figure);
  return {
    stamp: textOf(told.filter(({ kind }) => kind === 'stamp')),
    headline: textOf(wholeHeadline(report, figure)),
    about: textOf(told.filter(({ kind }) => kind !== 'stamp' && !weighs(kind))),
    weighing: textOf(told.filter(({ kind }) => weighs(kind))),
    link: `The whole report: ${report.source.front.title}`,
  };
}

const weighs = (kind: SaidKind): boolean => kind === 'caution' || kind === 'interest';

/** A chart without what its caption says of the page around it. */
export const aloneInFrame = ({ onPage: _, ...figure }: DrawnFigure): DrawnFigure => figure;
