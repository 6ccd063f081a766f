import type { DrawnFigure } from '../charts/figure.ts';
import type { PictureFiles } from '../kit/pictureFiles.ts';
import { pictureNotes } from '../kit/pictureNotes.ts';
import { pictureOf, type Picture } from '../kit/pictureOf.ts';
import type { Report } from '../kit/report.ts';
import { portableSvg } from './portableSvg.ts';
import { printedSvg } from './printedSvg.ts';
import { cachedPng } from './rasters.ts';
import { reportInOtherUnits } from './toldTwice.ts';

/** A picture's file as PNG, by the cache. @throws where the form is made for print alone */
export async function exportedPng(report: Report, files: PictureFiles): Promise<Uint8Array> {
  const { told, figure, picture } = drawnOf(report, files);
  const { svg, made } = picture;
  if (made.kind !== 'raster') throw new Error(`${files.name} is a drawing for print, and has no pixels.`);
  const { width, pixelsPerInch, on } = made;
  const texts = pictureNotes(told, figure, picture);
  return cachedPng(svg, width, { notes: { pixelsPerInch, texts }, on });
}

/** The same as SVG, with its fonts inside or with letters that are shapes. */
export async function exportedSvgFile(report: Report, files: PictureFiles): Promise<string> {
  const { picture } = drawnOf(report, files);
  const { svg, made } = picture;
  return made.kind === 'print' ? printedSvg(svg, made.width) : portableSvg(svg);
}

interface Drawn {
  /** The report in the units of the picture. */
  readonly told: Report;
  readonly figure: DrawnFigure;
  readonly picture: Picture;
}

function drawnOf(report: Report, { units, figure: id, form }: PictureFiles): Drawn {
  const told = report.telling.system === units ? report : reportInOtherUnits(report);
  const figure = told.figures.find((one) => one.id === id);
  if (figure?.kind !== 'drawn') throw new Error(`${report.source.slug} has no chart ${id} in ${units}.`);
  return { told, figure, picture: pictureOf(told, figure, form) };
}
