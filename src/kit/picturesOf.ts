import { kitOf } from './kitOf.ts';
import { pictureFiles, type PictureFiles } from './pictureFiles.ts';
import type { Report } from './report.ts';

/** Every picture that a report gives away, chart by chart. */
export function picturesOf(report: Report): readonly PictureFiles[] {
  return kitOf(report).offered.flatMap(({ figure }) => pictureFiles(report, figure));
}
