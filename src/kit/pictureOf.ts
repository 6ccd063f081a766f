import type { DrawnFigure } from '../charts/figure.ts';
import { chartForms, type ChartForm, type ExportForm } from './exportForms.ts';
import { exportedSvg } from './exportedSvg.ts';
import { pictureForms } from './pictureForm.ts';
import type { Report } from './report.ts';

/** A drawing that may leave its page, and its raster. */
export interface Picture {
  readonly svg: string;
  /** Of its raster, px. */
  readonly width: number;
  /** Of its raster, by which it has a width on paper. */
  readonly pixelsPerInch: number;
}

/** Forms in which a picture can be made. */
export type MadeForm = ChartForm;

export function isMade(form: ExportForm): form is MadeForm {
  return chartForms.some((made) => made === form);
}

/** One of a report's charts in a form: the only place where a form becomes a drawing. */
export function pictureOf(report: Report, figure: DrawnFigure, form: MadeForm, version: string): Picture {
  const { raster, pixelsPerInch } = pictureForms[form];
  return { svg: exportedSvg(report, figure, version, form), width: raster, pixelsPerInch };
}
