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
  // Of the renderer's own a copy each time; of one that does not start at a whole word another.
  const bytes = drawn.pixels;
  const rgba = bytes.byteOffset % 4 === 0 ? bytes : Uint8Array.from(bytes);
  const pixels: Pixels = { width: drawn.width, height: drawn.height, rgba };
  const maskOf = glyphMasks(letters);
  // Four bytes at once.
  const words = new Int32Array(rgba.buffer, rgba.byteOffset, drawn.width * drawn.height);
  let over: InkOver | null = null;
  for (const letter of letters) {
    const mask = maskOf(letter);
    if (mask !== null) over = copyLetter({ ...pixels, words }, letter, mask, over);
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

/** A letter's ink, from none to whole, over one colour; both as four bytes in the order of the raster. */
interface InkOver {
  readonly under: number;
  readonly ink: readonly [number, number, number];
  /** Of each step of the ink. */
  readonly mixed: Int32Array;
}

/**
 * Ink over what lies there; colours of the renderer are already multiplied by how much they cover.
 *
 * @param known the mixture of the letter before: most stand on one paper
 * @returns the last mixture
 */
function copyLetter(
  { width, height, words }: { readonly width: number; readonly height: number; readonly words: Int32Array },
  letter: PlacedGlyph,
  mask: GlyphMask,
  known: InkOver | null,
): InkOver | null {
  const { ink, width: maskWidth } = mask;
  const [left, top] = [letter.x + mask.left, letter.y + mask.top];
  const [fromRow, toRow] = [Math.max(0, -top), Math.min(mask.height, height - top)];
  const [fromColumn, toColumn] = [Math.max(0, -left), Math.min(maskWidth, width - left)];
  let over = known?.ink === letter.colour ? known : null;
  for (let row = fromRow; row < toRow; row += 1) {
    const start = (top + row) * width + left;
    for (let column = fromColumn; column < toColumn; column += 1) {
      const step = ink[row * maskWidth + column] ?? 0;
      if (step === 0) continue;
      const under = words[start + column] ?? 0;
      if (over?.under !== under) over = inkOver(letter.colour, under);
      words[start + column] = over.mixed[step] ?? under;
    }
  }
  return over ?? known;
}

function inkOver(ink: InkOver['ink'], under: number): InkOver {
  const mixed = new Int32Array(inkSteps + 1);
  const bytes = new Uint8Array(mixed.buffer);
  mixed[0] = under;
  const below = bytes.slice(0, 4);
  for (let step = 1; step <= inkSteps; step += 1)
    bytes.set(
      [...ink, 255].map((part, at) => {
        const from = below[at] ?? 0;
        return Math.round(from + ((part - from) * step) / inkSteps);
      }),
      step * 4,
    );
  return { under, ink, mixed };
}
