import type { DrawnFigure } from '../charts/figure.ts';
import { altText } from './altText.ts';
import type { ClearGround } from './clearGround.ts';
import { exportedSvg } from './exportedSvg.ts';
import { isChartForm, type ExportForm } from './exportForms.ts';
import { wholeHeadline } from './headline.ts';
import { leadPicture } from './leadPicture.ts';
import { pictureForms } from './pictureForm.ts';
import type { Report } from './report.ts';
import { textOf } from './said.ts';

/** A picture that may leave its page, whose colours are values. */
export interface Picture {
  readonly svg: string;
  readonly title: string;
  /** All that it says, for those who cannot see it. */
  readonly alternativeText: string;
  readonly made: Raster | Print;
}

/** Pixels, and the drawing with its fonts inside. */
interface Raster {
  readonly kind: 'raster';
  /** px */
  readonly width: number;
  /** By which it has a width on paper. */
  readonly pixelsPerInch: number;
  /** Null where it has a ground of its own. */
  readonly on: ClearGround | null;
}

/** A drawing whose letters are shapes. */
interface Print {
  readonly kind: 'print';
  /** On paper, mm. */
  readonly width: number;
}

/** Pictures for screens are 19 cm wide or more on paper. */
const screenPixelsPerInch = 144;

/**
 * One of a report's charts in a form: the only place where a form becomes a drawing. Forms of the first chart are about
 * the report's first main measure.
 */
export function pictureOf(report: Report, figure: DrawnFigure, form: ExportForm): Picture {
  if (isChartForm(form)) {
    const { raster: width, pixelsPerInch } = pictureForms[form];
    return {
      svg: exportedSvg(report, figure, form),
      title: textOf(wholeHeadline(report, figure)),
      alternativeText: altText(report, figure),
      made: { kind: 'raster', width, pixelsPerInch, on: null },
    };
  }
  const { alt: alternativeText, ...lead } = leadPicture(report, form);
  const { svg, title } = lead;
  const made: Picture['made'] =
    lead.kind === 'outlined-svg'
      ? { kind: 'print', width: lead.widthMm }
      : {
          kind: 'raster',
          width: lead.width,
          pixelsPerInch: screenPixelsPerInch,
          on: lead.kind === 'clear-png' ? lead.on : null,
        };
  return { svg, title, alternativeText, made };
}
