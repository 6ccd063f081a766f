import { captionOf, type DrawnFigure } from '../charts/figure.ts';
import { wrapText } from '../charts/textWidth.ts';
import { notDrawnWords } from '../prose/english/charts/shots.ts';
import { aloneInFrame, frameWords } from './frameWords.ts';
import type { Report } from './report.ts';

/** Widths of the columns that frames stand in most, px. */
export const frameWidths = [320, 600, 900] as const;

// Sizes of `frame.css`, `elements.css` and `tables.css`, px.
const sides = 32;
const above = 16;
/** Frame and paper of the stamp, and the paper under it. */
const stampFrame = 14;
const head = { size: 19, line: 26.03, below: 8, factor: 1.24 };
const text = { size: 16, line: 23.04, longest: 640 };
/** A browser may set a line wider than the widths of its letters say. */
const slack = 1.03;
/** The button for the units. */
const control = 44;
/** What unfolds the numbers, behind its triangle. */
const summary = { line: 24.48, padding: 20, triangle: 18 };
const paragraph = 16;
const wideFrom = 560;
const most = 900;
const narrowMost = 460;

/**
 * How high the frame of a chart has to be at a width, px, so that nothing of it scrolls: a little too high rather than
 * too low. Only a browser can tell exactly; it does so where the page around the frame listens.
 */
export function frameHeight(report: Report, figure: DrawnFigure, width: number): number {
  const room = Math.min(width - sides, most);
  const { stamp, headline, about, weighing, link } = frameWords(report, figure);
  const { drawn, recorded, counted, table } = figure;
  const captions = [
    captionOf(aloneInFrame(figure)),
    notDrawnWords(recorded - drawn, counted, table.rows.length >= recorded),
  ].filter((words) => words !== '');
  const lines = (words: string): number =>
    wrapText(words, text.size * slack, 400, Math.min(room, text.longest)).length * text.line;
  const notes = [about, weighing]
    .filter((words) => words !== '')
    .reduce((sum, words) => sum + lines(words) + paragraph, 0);
  const height =
    above +
    (stamp === '' ? 0 : lines(stamp) + stampFrame) +
    wrapText(headline, head.size * head.factor * slack, 600, room).length * head.line +
    head.below +
    drawingHeight(figure, room) +
    captions.reduce((sum, words) => sum + lines(words) + 8, 8) +
    Math.max(
      control,
      wrapText(`Numbers: ${figure.numbers}`, text.size * slack, 400, room - summary.triangle).length *
        summary.line +
        summary.padding,
    ) +
    paragraph +
    notes +
    lines(link) +
    control +
    2;
  return Math.ceil(height);
}

function drawingHeight({ svg }: DrawnFigure, room: number): number {
  const [drawing, shown] = room >= wideFrom ? [svg.wide, room] : [svg.narrow, Math.min(room, narrowMost)];
  const opening = /^<svg\b[^>]*>/.exec(drawing)?.[0] ?? '';
  const [, , width, height] = (/\sviewBox="([^"]*)"/.exec(opening)?.[1] ?? '').split(' ').map(Number);
  if (width === undefined || height === undefined) throw new Error(`A chart without a size: ${opening}`);
  return (height * shown) / width;
}
