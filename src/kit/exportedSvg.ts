import type { DrawnFigure } from '../charts/figure.ts';
import { literalColours, palette } from '../charts/palette.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { altText } from './altText.ts';
import { stripSentences } from './caveatStrip.ts';
import { chartInside } from './chartInside.ts';
import type { ChartForm } from './exportForms.ts';
import { headline, wholeHeadline } from './headline.ts';
import { onceEachFigure } from './onceEachFigure.ts';
import { pictureForms, roomIn, type PictureForm } from './pictureForm.ts';
import { drawnLines, serif, wrapped, wrappedEvenly } from './pictureLines.ts';
import { pictureStamps } from './pictureStamp.ts';
import { linesOfStrip, pictureStrip } from './pictureStrip.ts';
import type { Report } from './report.ts';
import { textOf, type Said } from './said.ts';

/** Width of the wide form, px, and of its raster. */
export const exportWidth = pictureForms.wide.width;
export const rasterWidth = pictureForms.wide.raster;

/**
 * A chart as one SVG that may leave its page: its stamps and headline above, caveat strip below, colours of the light
 * theme as values, attributes that every renderer knows. Fonts by name: Literata and Source Sans 3.
 */
export function exportedSvg(report: Report, figure: DrawnFigure, chosen: ChartForm = 'wide'): string {
  const form = pictureForms[chosen];
  const { width, margin, scale } = form;
  const head = serif(form.head.size);
  const { headLines, sentences } = wordsIn(report, figure, chosen);
  const stamps = pictureStamps(
    sentences.filter(({ kind }) => kind === 'stamp'),
    form,
    16,
  );
  const headTop = 16 + (stamps.height === 0 ? 0 : stamps.height + 8);
  const chart = chartInside(figure.svg[form.drawing]);
  const chartTop = headTop + headLines.length * form.head.leading + 12;
  const stripTop = chartTop + Math.ceil(chart.height * scale) + 16;
  const strip = pictureStrip(unstamped(sentences), form, stripTop);
  const height = Math.ceil(stripTop + strip.height + 16);
  const name = `${figure.id}-export`;
  // Named as everywhere else, however little of it the drawing has room for.
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${name}-title ${name}-desc">` +
    `<title id="${name}-title">${escapeXml(textOf(wholeHeadline(report, figure)))}</title>` +
    `<desc id="${name}-desc">${escapeXml(altText(report, figure))} ${escapeXml(textOf(sentences))}</desc>` +
    `<rect width="${width}" height="${height}" fill="${palette.paper.light}"/>` +
    stamps.svg +
    drawnLines(headLines, head, {
      x: margin,
      y: headTop + head.size,
      leading: form.head.leading,
      colour: palette.ink.light,
    }) +
    chart.at(margin, chartTop, scale) +
    strip.svg +
    `</svg>\n`;
  // In tags only: a name may read like a colour.
  return svg.replaceAll(/<[^>]*>/g, (tag) =>
    literalColours(tag, 'light').replaceAll('currentColor', palette.ink.light),
  );
}

/** What stands over and under a chart. */
interface Words {
  readonly headLines: readonly string[];
  readonly sentences: readonly Said[];
}

// A picture is drawn for each of its files; what there is room for is the same in all.
const known = onceEachFigure((): Map<ChartForm, Words> => new Map());

function wordsIn(report: Report, figure: DrawnFigure, chosen: ChartForm): Words {
  const ofFigure = known(report, figure);
  const words = ofFigure.get(chosen) ?? makeWords(report, figure, pictureForms[chosen]);
  ofFigure.set(chosen, words);
  return words;
}

function makeWords(report: Report, figure: DrawnFigure, form: PictureForm): Words {
  const head = serif(form.head.size);
  const headSentences = headline(
    report,
    figure,
    (said) => wrapped(textOf(said), head, roomIn(form)).length <= form.headLines,
  );
  return {
    headLines: wrappedEvenly(textOf(headSentences), head, roomIn(form)),
    sentences: stripSentences(
      report,
      figure,
      (said) => linesOfStrip(unstamped(said), form) <= form.stripLines,
    ),
  };
}

function unstamped(sentences: readonly Said[]): readonly Said[] {
  return sentences.filter(({ kind }) => kind !== 'stamp');
}

// Asked for by every page that shows the image; the image itself would be too large to keep.
const heights = new WeakMap<DrawnFigure, Map<ChartForm, number>>();

/** Height in px of an exported chart at its own width. */
export function exportedHeight(report: Report, figure: DrawnFigure, form: ChartForm = 'wide'): number {
  const ofFigure = heights.get(figure) ?? new Map<ChartForm, number>();
  heights.set(figure, ofFigure);
  const known = ofFigure.get(form);
  if (known !== undefined) return known;
  const height = Number(/\sheight="(\d+)"/.exec(exportedSvg(report, figure, form))?.[1] ?? NaN);
  ofFigure.set(form, height);
  return height;
}
