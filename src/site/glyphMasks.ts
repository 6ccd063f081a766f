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
  const missing = new Map(wanted.filter((one) => !masks.has(keyOf(one))).map((one) => [keyOf(one), one]));
  if (missing.size > 0) drawMasks([...missing.values()]);
  return (one) => masks.get(keyOf(one)) ?? null;
}

interface Cell extends Pick<GlyphMask, 'left' | 'top' | 'width' | 'height'> {
  readonly of: GlyphAt;
}

/** Below one another on one sheet. */
function drawMasks(wanted: readonly GlyphAt[]): void {
  const cells = wanted.flatMap((of): Cell[] => {
    const scale = of.em / unitsPerEm(of.font);
    const box = inkBox(of.font, of.glyph);
    if (box === null) {
      masks.set(keyOf(of), null);
      return [];
    }
    const [left, top] = [Math.floor(box.left * scale), Math.floor(-box.head * scale)];
    const [width, height] = [Math.ceil(box.right * scale) + 1 - left, Math.ceil(-box.foot * scale) - top];
    return [{ of, left, top, width, height }];
  });
  if (cells.length === 0) return;
  const width = Math.max(...cells.map((cell) => cell.width));
  let y = 0;
  const paths = cells.map(({ of, left, top, height }) => {
    const scale = of.em / unitsPerEm(of.font);
    const path = `<path transform="translate(${of.phase / phases - left},${y - top})scale(${scale},${-scale})" d="M0 0${glyphOutline(of.font, of.glyph)}"/>`;
    y += height;
    return path;
  });
  const sheet = new Resvg(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${y}">${paths.join('')}</svg>`,
    { font: { loadSystemFonts: false } },
  ).render().pixels;
  let from = 0;
  for (const { of, ...cell } of cells) {
    const ink = new Uint8Array(cell.width * cell.height);
    for (let row = 0; row < cell.height; row += 1)
      for (let column = 0; column < cell.width; column += 1)
        ink[row * cell.width + column] = Math.round(
          ((sheet[((from + row) * width + column) * 4 + 3] ?? 0) * inkSteps) / 255,
        );
    from += cell.height;
    masks.set(keyOf(of), { ...cell, ink });
  }
}
