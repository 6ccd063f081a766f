import { Resvg } from '@resvg/resvg-js';
import type { FontName } from './fontFiles.ts';
import { glyphOutline, inkBox, unitsPerEm } from './shapedLine.ts';

/** How many steps a letter's edge takes from paper to ink: more nobody sees, and each costs a colour. */
export const inkSteps = 15;

/** Letters stand at quarters of a pixel along their line, and on whole ones up and down. */
export const phases = 4;

/** How much of each pixel a letter covers. */
export interface GlyphMask {
  /** From the place of the letter, whole px. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** 0 to `inkSteps`, from the top left. */
  readonly ink: Uint8Array;
}

/** A letter of a font, how large its em is in px, and how many quarters of a pixel it is moved to the right. */
export interface GlyphAt {
  readonly font: FontName;
  readonly em: number;
  readonly glyph: number;
  readonly phase: number;
}

const masks = new Map<string, GlyphMask | null>();
const most = 20_000;

const keyOf = ({ font, em, glyph, phase }: GlyphAt): string => `${font} ${em} ${glyph} ${phase}`;

/** Masks of all of these, drawn once each; null for a letter without ink. */
export function glyphMasks(wanted: readonly GlyphAt[]): (one: GlyphAt) => GlyphMask | null {
  if (masks.size > most) masks.clear();
  for (const one of wanted) {
    const key = keyOf(one);
    if (!masks.has(key)) masks.set(key, drawMask(one));
  }
  return (one) => masks.get(keyOf(one)) ?? null;
}

/** A letter by itself: beside others its edges would hang on where it stands, and on what was drawn before. */
function drawMask({ font, em, glyph, phase }: GlyphAt): GlyphMask | null {
  const box = inkBox(font, glyph);
  if (box === null) return null;
  const scale = em / unitsPerEm(font);
  const [left, top] = [Math.floor(box.left * scale), Math.floor(-box.head * scale)];
  const [width, height] = [Math.ceil(box.right * scale) + 1 - left, Math.ceil(-box.foot * scale) - top];
  const { pixels } = new Resvg(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">` +
      `<path transform="translate(${phase / phases - left},${-top})scale(${scale},${-scale})" d="M0 0${glyphOutline(font, glyph)}"/></svg>`,
    { font: { loadSystemFonts: false } },
  ).render();
  const ink = Uint8Array.from({ length: width * height }, (_, at) =>
    Math.round(((pixels[at * 4 + 3] ?? 0) * inkSteps) / 255),
  );
  return { left, top, width, height, ink };
}
