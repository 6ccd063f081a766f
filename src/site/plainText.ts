import type { SvgText } from '../kit/svgTexts.ts';
import { fontOf, type FontName } from './fontFiles.ts';
import { phases } from './glyphMasks.ts';
import { startsAt } from './outlinedSvg.ts';
import { shapedLine, unitsPerEm } from './shapedLine.ts';

/** A letter by its number in its font, the pixel of its place, and how many quarters it stands to the right of that. */
interface PlacedGlyph {
  readonly glyph: number;
  readonly phase: number;
  readonly x: number;
  readonly y: number;
}

/** A text whose letters stand upright, whole and in one colour, in px of the raster. */
export interface PlainText {
  readonly font: FontName;
  readonly em: number;
  /** Red, green and blue. */
  readonly colour: readonly [number, number, number];
  readonly letters: readonly PlacedGlyph[];
}

/**
 * A text as letters to be copied; null where it is no plain one.
 *
 * @param rasterScale px of the raster for one of the drawing
 */
export function plainText(text: SvgText, rasterScale: number): PlainText | null {
  const { place, fill, strokeWidth, anchor } = text;
  const hex = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(fill);
  if (place === null || strokeWidth !== null || hex === null || !Number.isFinite(rasterScale)) return null;
  const [, red = '', green = '', blue = ''] = hex;
  const font = fontOf(text);
  const scale = rasterScale * place.scale;
  const em = Math.round(text.size * scale * 100) / 100;
  const unit = em / unitsPerEm(font);
  const { glyphs, width } = shapedLine(text.words, font);
  const start = place.x * rasterScale + text.x * scale - startsAt[anchor] * width * unit;
  const foot = place.y * rasterScale + text.y * scale;
  return {
    font,
    em,
    colour: [parseInt(red, 16), parseInt(green, 16), parseInt(blue, 16)],
    letters: glyphs.map(({ number: glyph, x, y }) => {
      const quarters = Math.round((start + x * unit) * phases);
      const column = Math.floor(quarters / phases);
      return { glyph, phase: quarters - column * phases, x: column, y: Math.round(foot - y * unit) };
    }),
  };
}
