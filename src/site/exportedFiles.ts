import type { DrawnFigure } from '../charts/figure.ts';
import { pictureNotes } from '../kit/pictureNotes.ts';
import { pictureOf } from '../kit/pictureOf.ts';
import type { GivenPicture } from '../kit/picturesOf.ts';
import type { Report } from '../kit/report.ts';
import { portableSvg } from './portableSvg.ts';
import { cachedPng } from './rasters.ts';
import { reportInOtherUnits } from './toldTwice.ts';
import { version } from './version.ts';

/** A picture's file as PNG, by the cache. */
export async function exportedPng(report: Report, picture: GivenPicture): Promise<Uint8Array> {
  const { told, figure } = drawnOf(report, picture);
  const { svg, width, pixelsPerInch } = pictureOf(told, figure, picture.form, version);
  return cachedPng(svg, width, { notes: { pixelsPerInch, texts: pictureNotes(told, figure, version) } });
}

/** The same as SVG, with its fonts inside. */
export async function exportedSvgFile(report: Report, picture: GivenPicture): Promise<string> {
  const { told, figure } = drawnOf(report, picture);
  return portableSvg(pictureOf(told, figure, picture.form, version).svg);
}

/** The report in the units of the picture, and the chart in it. */
function drawnOf(
  report: Report,
  picture: GivenPicture,
): { readonly told: Report; readonly figure: DrawnFigure } {
  const told = report.telling.system === picture.units ? report : reportInOtherUnits(report);
  const figure = told.figures.find(({ id }) => id === picture.figure);
  if (figure?.kind !== 'drawn')
    throw new Error(`${report.source.slug} has no chart ${picture.figure} in ${picture.units}.`);
  return { told, figure };
}
