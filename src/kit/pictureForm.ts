import type { Variant } from '../charts/layout.ts';
import type { ChartForm } from './exportForms.ts';

/** A size of letters and the distance of its lines, px of the picture. */
interface Lettering {
  readonly size: number;
  readonly leading: number;
}

/** How a chart is set that leaves its page, px at the width of the picture. */
export interface PictureForm {
  readonly width: number;
  /** Width of its raster, px. */
  readonly raster: number;
  /** Of the raster, by which it has a width on paper. */
  readonly pixelsPerInch: number;
  readonly drawing: Variant;
  /** How many times the drawing is enlarged. */
  readonly scale: number;
  /** Paper at the left and right of everything. */
  readonly margin: number;
  readonly head: Lettering;
  /** For these many lines the headline leaves out what it can. */
  readonly headLines: number;
  readonly stamp: Lettering;
  readonly strip: Lettering;
  /** For these many lines, the address apart, the strip leaves out what it can. */
  readonly stripLines: number;
}

/** Part of a line's room that stays empty, so that type of other widths finds place. */
export const slack = 0.1;

export const pictureForms: Readonly<Record<ChartForm, PictureForm>> = {
  // 15.2 cm wide on paper with letters of 7.9 points.
  wide: {
    width: 768,
    raster: 1200,
    pixelsPerInch: 200,
    drawing: 'wide',
    scale: 1,
    margin: 24,
    head: { size: 19, leading: 26 },
    headLines: 3,
    stamp: { size: 15, leading: 19 },
    strip: { size: 14, leading: 19 },
    stripLines: 5,
  },
  // 7.6 cm wide on paper, a column of a newspaper, with letters of 9.6 points. Enlarged so that the hatch repeats every
  // 21 px of the raster and letters of 14 are 16.4.
  phone: {
    width: 360,
    raster: 720,
    pixelsPerInch: 240,
    drawing: 'narrow',
    scale: 1.171875,
    margin: 11.25,
    head: { size: 19, leading: 25 },
    headLines: 6,
    stamp: { size: 16, leading: 20 },
    strip: { size: 16, leading: 21 },
    stripLines: 11,
  },
};

/** Width of what a picture shows between its margins, px. */
export function roomIn({ width, margin }: PictureForm): number {
  return width - 2 * margin;
}
