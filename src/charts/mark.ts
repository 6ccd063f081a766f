import type { Markish } from '@observablehq/plot';

type Plot = typeof import('@observablehq/plot');

/**
 * A mark of a chart, which is handed what of Plot it is made with when the chart is drawn: whoever only asks what charts there are
 * loads no more than our own files.
 */
export type Mark = (plot: Pick<Plot, 'dot' | 'line' | 'rect' | 'text'>) => Markish;

/** Something that no mark of Plot draws. */
export const ownMark =
  (make: (document: Document) => SVGElement): Mark =>
  () =>
  (_index, _scales, _values, _dimensions, { document }) =>
    make(document);

export const noMark: Mark = () => null;
