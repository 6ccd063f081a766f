import { dot, line, plot, rect, text } from '@observablehq/plot';
import { cleanSvg } from './cleanSvg.ts';
import { DrawingDocument, DrawingElement } from './drawingDocument.ts';
import type { Mark } from './mark.ts';

/** A chart in px: marks are placed in px from the top left corner, `id`s inside them may be any. */
export interface ChartDrawing {
  /** Put before every id, so that it must be unique to the figure and the variant. */
  readonly prefix: string;
  /** The image's accessible name. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

// Passed to Plot and never made global: a global window moves every coordinate by half a pixel. Plot's types ask for all that a
// browser's document has; what this one lacks throws when it is asked for.
const document = new DrawingDocument() as unknown as Document;

/** Runs `draw` and throws if it writes a warning; Plot has no other way to tell. */
const refusingWarnings = <Result>(draw: () => Result): Result => {
  const { warn } = console;
  const warnings: string[] = [];
  console.warn = (...parts: readonly unknown[]) => {
    warnings.push(parts.map(String).join(' '));
  };
  try {
    const result = draw();
    if (warnings.length > 0) throw new Error(`The chart was drawn with a warning: ${warnings.join(' ')}`);
    return result;
  } finally {
    console.warn = warn;
  }
};

/**
 * The one way to draw a chart: SVG text that is one named image, without styles, with ids of its own, coordinates rounded.
 * Throws on any warning of Plot, and when a number or a word in the result is not one.
 */
export const renderChart = ({ prefix, name, width, height, marks }: ChartDrawing): string => {
  const drawn: unknown = refusingWarnings(() =>
    plot({
      document,
      width,
      height,
      margin: 0,
      className: 'chart',
      x: { type: 'identity', axis: null },
      y: { type: 'identity', axis: null },
      marks: marks.map((make) => make({ dot, line, rect, text })),
    }),
  );
  if (!(drawn instanceof DrawingElement)) throw new Error('Plot drew a chart elsewhere than it was told.');
  return cleanSvg(drawn, { prefix, name });
};
