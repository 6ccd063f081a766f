import type { DrawnFigure } from '../charts/figure.ts';
import { caveats } from './caveatStrip.ts';
import { wholeHeadline } from './headline.ts';
import type { Report } from './report.ts';
import { textOf } from './said.ts';

/** What a frame says around its chart. */
export interface FrameWords {
  /** "Invented data. Corrected 2 April 2026."; empty for most. */
  readonly stamp: string;
  readonly headline: string;
  readonly caveats: string;
  /** Words of the link to the report. */
  readonly link: string;
}

export function frameWords(report: Report, figure: DrawnFigure): FrameWords {
  const told = caveats(report, figure);
  return {
    stamp: textOf(told.filter(({ kind }) => kind === 'stamp')),
    headline: textOf(wholeHeadline(report, figure)),
    caveats: textOf(told.filter(({ kind }) => kind !== 'stamp')),
    link: `The whole report: ${report.source.front.title}`,
  };
}

/** A chart without what its caption says of the page around it. */
export const aloneInFrame = ({ onPage: _, ...figure }: DrawnFigure): DrawnFigure => figure;
