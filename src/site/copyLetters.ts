import type { Pixels } from '../kit/pixels.ts';
import { columnOf, glyphMasks, inkSteps, rowOf, stepOf } from './glyphMasks.ts';
import type { PlainText } from './plainText.ts';

/**
 * Copies the letters of texts on top of a drawing, in their order; what does not lie within it is left out.
 *
 * @param pixels whose bytes start at a whole word
 */
export function copyLetters({ width, height, rgba }: Pixels, texts: readonly PlainText[]): void {
  // Four bytes at once.
  const words = new Int32Array(rgba.buffer, rgba.byteOffset, width * height);
  for (const { font, em, colour, letters } of texts) {
    const maskOf = glyphMasks(font, em);
    // Most letters of a text stand on one paper.
    let paper: InkOver | null = null;
    for (const { glyph, phase, x, y } of letters) {
      const mask = maskOf(glyph, phase);
      if (mask === null) continue;
      const [left, top] = [x + mask.left, y + mask.top];
      const within = left >= 0 && top >= 0 && left + mask.width <= width && top + mask.height <= height;
      const start = top * width + left;
      const { ink } = mask;
      for (let at = 0; at < ink.length; at += 1) {
        const one = ink[at] ?? 0;
        const [row, column] = [rowOf(one), columnOf(one)];
        if (!within && !(left + column >= 0 && left + column < width && top + row >= 0 && top + row < height))
          continue;
        const pixel = start + row * width + column;
        const under = words[pixel] ?? 0;
        paper ??= inkOver(colour, under);
        words[pixel] =
          under === paper.under ? (paper.mixed[stepOf(one)] ?? under) : mixed(colour, under, stepOf(one));
      }
    }
  }
}

type Ink = PlainText['colour'];

/** A letter's ink, from none to whole, over one colour; both as four bytes in the order of the raster. */
interface InkOver {
  readonly under: number;
  /** Of each step of the ink. */
  readonly mixed: Int32Array;
}

const inkOver = (ink: Ink, under: number): InkOver => ({
  under,
  mixed: Int32Array.from({ length: inkSteps + 1 }, (_, step) => mixed(ink, under, step)),
});

const word = new Int32Array(1);
const bytes = new Uint8Array(word.buffer);

/** Ink over a colour of the renderer, which is already multiplied by how much it covers. */
function mixed([red, green, blue]: Ink, under: number, step: number): number {
  word[0] = under;
  bytes[0] = between(bytes[0] ?? 0, red, step);
  bytes[1] = between(bytes[1] ?? 0, green, step);
  bytes[2] = between(bytes[2] ?? 0, blue, step);
  bytes[3] = between(bytes[3] ?? 0, 255, step);
  return word[0];
}

const between = (from: number, to: number, step: number): number =>
  Math.round(from + ((to - from) * step) / inkSteps);
