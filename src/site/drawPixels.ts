import { Resvg } from '@resvg/resvg-js';
import type { Pixels } from '../kit/encodePng.ts';
import { replaceTexts, type SvgText } from '../kit/svgTexts.ts';
import { fontFile, fontNames, fontOf } from './fontFiles.ts';
import { glyphMasks, inkSteps, phases, type GlyphAt, type GlyphMask } from './glyphMasks.ts';
import { outlinedText, startsAt } from './outlinedSvg.ts';
import { shapedLine, unitsPerEm } from './shapedLine.ts';

/** A letter and the pixel of its place. */
interface PlacedGlyph extends GlyphAt {
  readonly x: number;
  readonly y: number;
  /** Red, green and blue. */
  readonly colour: readonly [number, number, number];
}

/**
 * The pixels of an SVG whose colours are values, `width` px wide, drawn with the fonts of the site and no others.
 *
 * Letters are most of the work: plain ones are drawn once for all pictures and then copied on top of the drawing. Those with
 * a line round them, or turned, stand in the drawing as shapes.
 */
export function drawPixels(svg: string, width: number): Pixels {
  const scale = width / Number(/^<svg\b[^>]*?\swidth="([\d.]+)"/.exec(svg)?.[1] ?? NaN);
  const letters: PlacedGlyph[] = [];
  const bare = replaceTexts(svg, (text) => {
    const placed = placedGlyphs(text, scale);
    if (placed === null) return outlinedText(text);
    letters.push(...placed);
    return '';
  });
  const drawn = new Resvg(bare, {
    fitTo: { mode: 'width', value: width },
    font: {
      // Of a text that holds more than words.
      fontFiles: bare.includes('<text') ? fontNames.map(fontFile) : [],
      loadSystemFonts: false,
      defaultFontFamily: 'Source Sans 3',
    },
  }).render();
  const pixels: Pixels = { width: drawn.width, height: drawn.height, rgba: drawn.pixels };
  const maskOf = glyphMasks(letters);
  for (const letter of letters) {
    const mask = maskOf(letter);
    if (mask !== null) copyLetter(pixels, letter, mask);
  }
  return pixels;
}

/** The letters of a text, px of the raster; null where they are no plain ones. */
function placedGlyphs(text: SvgText, rasterScale: number): readonly PlacedGlyph[] | null {
  const { place, fill, strokeWidth, anchor } = text;
  const hex = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(fill);
  if (place === null || strokeWidth !== null || hex === null || !Number.isFinite(rasterScale)) return null;
  const [, red = '', green = '', blue = ''] = hex;
  const colour = [parseInt(red, 16), parseInt(green, 16), parseInt(blue, 16)] as const;
  const font = fontOf(text);
  const scale = rasterScale * place.scale;
  const em = Math.round(text.size * scale * 100) / 100;
  const unit = em / unitsPerEm(font);
  const { glyphs, width } = shapedLine(text.words, font);
  const start = place.x * rasterScale + text.x * scale - startsAt[anchor] * width * unit;
  const foot = place.y * rasterScale + text.y * scale;
  return glyphs.map(({ number, x, y }) => {
    const quarters = Math.round((start + x * unit) * phases);
    return {
      ...{ font, em, glyph: number, colour },
      phase: ((quarters % phases) + phases) % phases,
      x: Math.floor(quarters / phases),
      y: Math.round(foot - y * unit),
    };
  });
}

/** Ink over what lies there; colours of the renderer are already multiplied by how much they cover. */
function copyLetter({ width, height, rgba }: Pixels, letter: PlacedGlyph, mask: GlyphMask): void {
  const [red, green, blue] = letter.colour;
  const [left, top] = [letter.x + mask.left, letter.y + mask.top];
  const [fromRow, toRow] = [Math.max(0, -top), Math.min(mask.height, height - top)];
  const [fromColumn, toColumn] = [Math.max(0, -left), Math.min(mask.width, width - left)];
  for (let row = fromRow; row < toRow; row += 1) {
    for (let column = fromColumn; column < toColumn; column += 1) {
      const ink = mask.ink[row * mask.width + column] ?? 0;
      if (ink === 0) continue;
      const at = ((top + row) * width + left + column) * 4;
      const part = ink / inkSteps;
      rgba[at] = blend(rgba[at] ?? 0, red, part);
      rgba[at + 1] = blend(rgba[at + 1] ?? 0, green, part);
      rgba[at + 2] = blend(rgba[at + 2] ?? 0, blue, part);
      rgba[at + 3] = blend(rgba[at + 3] ?? 0, 255, part);
    }
  }
}

const blend = (under: number, ink: number, part: number): number => Math.round(under + (ink - under) * part);
