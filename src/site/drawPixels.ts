import { Resvg } from '@resvg/resvg-js';
import type { Pixels } from '../kit/pixels.ts';
import { replaceTexts } from '../kit/svgTexts.ts';
import { copyLetters } from './copyLetters.ts';
import { fontFile, fontNames } from './fontFiles.ts';
import { outlinedText } from './outlinedSvg.ts';
import { plainText, type PlainText } from './plainText.ts';
import { uncropped } from './rendering.ts';

/**
 * The pixels of an SVG whose colours are values, `width` px wide, drawn with the fonts of the site and no others.
 *
 * Letters are most of the work: plain ones are drawn once for all pictures and then copied on top of the drawing. Those with
 * a line round them, or turned, stand in the drawing as shapes.
 */
export function drawPixels(svg: string, width: number): Pixels {
  const scale = width / Number(/^<svg\b[^>]*?\swidth="([\d.]+)"/.exec(svg)?.[1] ?? NaN);
  const texts: PlainText[] = [];
  const bare = replaceTexts(svg, (text) => {
    const plain = plainText(text, scale);
    if (plain === null) return outlinedText(text);
    texts.push(plain);
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
    crop: uncropped,
  }).render();
  // Of the renderer's own a copy each time; of one that does not start at a whole word another.
  const bytes = drawn.pixels;
  const pixels: Pixels = {
    width: drawn.width,
    height: drawn.height,
    rgba: bytes.byteOffset % 4 === 0 ? bytes : Uint8Array.from(bytes),
  };
  copyLetters(pixels, texts);
  return pixels;
}

/**
 * Frees the memory of pixels that nobody reads any more. Left to the garbage collector, a few megabytes a picture have it
 * search all else that is held every dozen pictures, which takes longer than to draw them.
 */
export function giveBack({ rgba: { buffer } }: Pixels): void {
  if (buffer instanceof ArrayBuffer && !buffer.detached) buffer.transfer(0);
}
