import { exportedPictures, type ExportedPicture } from './exportForms.ts';
import { kitOf } from './kitOf.ts';
import { isMade, type MadeForm } from './pictureOf.ts';
import type { Report } from './report.ts';

/** A picture that a site gives away, in a form that can be made. */
export interface GivenPicture extends ExportedPicture {
  readonly form: MadeForm;
}

/** Every picture that a report gives away, told in the shop's units, chart by chart. */
export function picturesOf(report: Report): readonly GivenPicture[] {
  const choices = report.source.shop?.exports ?? [];
  return kitOf(report).offered.flatMap(({ figure }, at) =>
    exportedPictures(figure.id, { own: report.telling.system, choices, leads: at === 0 }).flatMap(
      ({ form, ...picture }) => (isMade(form) ? [{ ...picture, form }] : []),
    ),
  );
}
