import type { DrawnFigure } from '../charts/figure.ts';
import { exportedPictures, type ExportedPicture, type ExportForm } from './exportForms.ts';
import { figuresToOffer } from './kitOf.ts';
import type { Report } from './report.ts';

/** A picture with the endings of the files that it comes as. */
export interface PictureFiles extends ExportedPicture {
  readonly endings: readonly ('png' | 'svg')[];
}

/** Printers take the drawing, whose letters are shapes; what is laid over a film has to be pixels. */
const endingsOf = (form: ExportForm): PictureFiles['endings'] => {
  if (form === 'print') return ['svg'];
  return form === 'lower-third' ? ['png'] : ['png', 'svg'];
};

/** Every picture that an editor may take of one chart of a report, the wide one in the shop's units first. */
export function pictureFiles(report: Report, figure: DrawnFigure): readonly PictureFiles[] {
  const { shop } = report.source;
  return exportedPictures(figure.id, {
    own: report.telling.scalesIn,
    choices: shop?.exports ?? [],
    leads: figuresToOffer(report)[0]?.id === figure.id,
  }).map((picture) => ({ ...picture, endings: endingsOf(picture.form) }));
}
