import { Resvg } from '@resvg/resvg-js';
import type { FontName } from './fontFiles.ts';
import { uncropped } from './rendering.ts';
import { glyphOutline, inkBox, unitsPerEm } from './shapedLine.ts';

/** Number of shades along a letter's edge from paper to ink: more cannot be seen, and each costs a colour of the palette. */
export const inkSteps = 15;

/** Letters stand at quarters of a pixel along their line, and on whole ones up and down. */
export const phases = 4;

/** How much of each pixel a letter covers. */
interface GlyphMask {
  /** From the place of the letter, whole px. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** The pixels with ink, row by row: see `inkAt`. */
  readonly ink: Int32Array;
}

/** A pixel of a mask as one number: its row, its column, and its ink from 1 to `inkSteps`. */
const inkAt = (row: number, column: number, step: number): number => (row << 20) | (column << 8) | step;
export const rowOf = (ink: number): number => ink >>> 20;
export const columnOf = (ink: number): number => (ink >>> 8) & 0xfff;
export const stepOf = (ink: number): number => ink & 0xff;

/** The masks of a font's letters by their numbers and how many quarters of a pixel they are moved to the right. */
type GlyphMasks = (glyph: number, phase: number) => GlyphMask | null;

const sheets = new Map<string, Map<number, GlyphMask | null>>();
const most = 20_000;
let held = 0;

/**
 * Masks of the letters of a font at a size, drawn once each; null for a letter without ink.
 *
 * @param em px
 */
export function glyphMasks(font: FontName, em: number): GlyphMasks {
  if (held > most) {
    sheets.clear();
    held = 0;
  }
  const name = `${font} ${em}`;
  const sheet = sheets.get(name) ?? new Map<number, GlyphMask | null>();
  sheets.set(name, sheet);
  return (glyph, phase) => {
    const key = glyph * phases + phase;
    const known = sheet.get(key);
    if (known !== undefined) return known;
    const drawn = drawMask(font, em, glyph, phase);
    sheet.set(key, drawn);
    held += 1;
    return drawn;
  };
}

/** A letter by itself: beside others its edges would hang on where it stands, and on what was drawn before. */
function drawMask(font: FontName, em: number, glyph: number, phase: number): GlyphMask | null {
  const box = inkBox(font, glyph);
  if (box === null) return null;
  const scale = em / unitsPerEm(font);
  const [left, top] = [Math.floor(box.left * scale), Math.floor(-box.head * scale)];
  const [width, height] = [Math.ceil(box.right * scale) + 1 - left, Math.ceil(-box.foot * scale) - top];
  const { pixels } = new Resvg(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">` +
      `<path transform="translate(${phase / phases - left},${-top})scale(${scale},${-scale})" d="M0 0${glyphOutline(font, glyph)}"/></svg>`,
    { font: { loadSystemFonts: false }, crop: uncropped },
  ).render();
  const ink: number[] = [];
  for (let row = 0; row < height; row += 1)
    for (let column = 0; column < width; column += 1) {
      const cover = pixels[(row * width + column) * 4 + 3] ?? 0;
      const step = Math.round((cover * inkSteps) / 255);
      if (step > 0) ink.push(inkAt(row, column, step));
    }
  return { left, top, width, height, ink: Int32Array.from(ink) };
}
