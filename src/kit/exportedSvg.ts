import type { DrawnFigure } from '../charts/figure.ts';
import { literalColours, palette } from '../charts/palette.ts';
import { wrapText } from '../charts/textWidth.ts';
import { caveatStrip, stripText } from './caveatStrip.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { headline } from './headline.ts';
import { textOf, type Said } from './said.ts';
import { altText } from './altText.ts';
import type { Report } from './report.ts';

const margin = 24;
const chartWidth = 720;
/** Width of an exported chart, px; its raster is drawn at `rasterWidth`. */
export const exportWidth = chartWidth + 2 * margin;
export const rasterWidth = 1200;

const head = { size: 19, leading: 26 };
const strip = { leading: 19 };
const mostHeadLines = 3;

/** Literata at weight 600 beside Source Sans 3: no text of ours is set wider than this. */
const literataFactor = 1.24;

/**
 * A chart as one SVG that may leave its page: headline above, caveat strip below, colours of the light theme as values,
 * attributes that every renderer knows. Fonts by name: Literata and Source Sans 3.
 */
export function exportedSvg(report: Report, figure: DrawnFigure, version: string): string {
  const light = {
    paper: palette.paper.light,
    ink: palette.ink.light,
    second: palette['ink-2'].light,
    rule: palette.rule.light,
  };
  const wrapHead = (sentences: readonly Said[]): readonly string[] =>
    wrapText(textOf(sentences), head.size * literataFactor, 600, chartWidth);
  const headSentences = headline(report, figure, (said) => wrapHead(said).length <= mostHeadLines);
  const headLines = wrapHead(headSentences);
  const stripLines = caveatStrip(report, figure, version, chartWidth);
  const chart = chartInside(figure.svg.wide);
  const headBottom = 16 + headLines.length * head.leading;
  const chartTop = headBottom + 12;
  const stripTop = chartTop + chart.height + 16;
  const height = Math.ceil(stripTop + 10 + stripLines.length * strip.leading + 16);
  const name = `${figure.id}-export`;
  const text = (lines: readonly string[], first: number, leading: number): string =>
    lines
      .map((line, row) => `<text x="${margin}" y="${first + row * leading}">${escapeXml(line)}</text>`)
      .join('');
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${exportWidth}" height="${height}" viewBox="0 0 ${exportWidth} ${height}" role="img" aria-labelledby="${name}-title ${name}-desc">` +
    `<title id="${name}-title">${escapeXml(textOf(headSentences))}</title>` +
    `<desc id="${name}-desc">${escapeXml(altText(report, figure))} ${escapeXml(stripLines.join(' '))}</desc>` +
    `<rect width="${exportWidth}" height="${height}" fill="${light.paper}"/>` +
    `<g font-family="Literata, Georgia, serif" font-size="${head.size}" font-weight="600" fill="${light.ink}">${text(headLines, 16 + head.size, head.leading)}</g>` +
    chart.at(margin, chartTop) +
    `<path d="M${margin},${stripTop}H${exportWidth - margin}" stroke="${light.rule}" stroke-width="1"/>` +
    `<g font-family="'Source Sans 3', system-ui, sans-serif" font-size="${stripText.size}" font-weight="${stripText.weight}" fill="${light.second}">${text(stripLines, stripTop + 10 + stripText.size, strip.leading)}</g>` +
    `</svg>\n`;
  // In tags only: a name may read like a colour.
  return svg.replaceAll(/<[^>]*>/g, (tag) =>
    literalColours(tag, 'light').replaceAll('currentColor', light.ink),
  );
}

/** The wide chart as a group: a renderer would clip an SVG within an SVG, which costs it a second picture. */
function chartInside(svg: string): {
  readonly height: number;
  readonly at: (x: number, y: number) => string;
} {
  const opening = /^<svg\b[^>]*>/.exec(svg)?.[0] ?? '';
  const height = Number(/\sheight="([\d.]+)"/.exec(opening)?.[1] ?? NaN);
  if (!Number.isFinite(height)) throw new Error('The chart has no height.');
  const bare = opening.replaceAll(/\s(?:role|aria-labelledby|class|xmlns|width|height|viewBox)="[^"]*"/g, '');
  const body = svg
    .slice(opening.length)
    .replace(/<title[^>]*>[^<]*<\/title>/, '')
    .replace(/<\/svg>\s*$/, '</g>');
  return { height, at: (x, y) => bare.replace('<svg', `<g transform="translate(${x},${y})"`) + body };
}

// Asked for by every page that shows the image; the image itself would be too large to keep.
const heights = new WeakMap<DrawnFigure, number>();

/** Height in px of an exported chart at its own width. */
export function exportedHeight(report: Report, figure: DrawnFigure, version: string): number {
  const known =
    heights.get(figure) ?? Number(/\sheight="(\d+)"/.exec(exportedSvg(report, figure, version))?.[1] ?? 0);
  heights.set(figure, known);
  return known;
}
