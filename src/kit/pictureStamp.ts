import { palette } from '../charts/palette.ts';
import { roomIn, slack, type PictureForm } from './pictureForm.ts';
import { drawnLines, sans, widthOf, wrapped } from './pictureLines.ts';
import type { Said } from './said.ts';

/** A piece of a picture and the height it takes, px. */
export interface Piece {
  readonly height: number;
  readonly svg: string;
}

const pad = 8;
const rim = 1.5;
const apart = 8;

/** Each stamp in a frame of its own, beside one another where there is room; nothing where there is none. */
export function pictureStamps(stamps: readonly Said[], form: PictureForm, top: number): Piece {
  const { size, leading } = form.stamp;
  const type = sans(size, 600);
  const boxHeight = (lines: number): number => lines * leading + pad;
  let [left, y, row] = [form.margin, top, 0];
  const drawn = stamps.map(({ text }) => {
    const lines = wrapped(text, type, roomIn(form) - 2 * pad);
    // As wide as letters of another type may be.
    const width = Math.ceil(Math.max(...lines.map((line) => widthOf(line, type))) * (1 + slack) + 2 * pad);
    if (left > form.margin && left + width > form.width - form.margin)
      [left, y, row] = [form.margin, y + row + apart, 0];
    const place = {
      x: left + rim / 2,
      y: y + rim / 2,
      width: width - rim,
      height: boxHeight(lines.length) - rim,
    };
    const frame = `<rect x="${place.x}" y="${place.y}" width="${place.width}" height="${place.height}" fill="none" stroke="${palette.ink.light}" stroke-width="${rim}"/>`;
    const words = drawnLines(lines, type, {
      x: left + width / 2,
      y: y + pad / 2 + size - 1,
      centred: true,
      leading,
      colour: palette.ink.light,
    });
    left += width + apart;
    row = Math.max(row, boxHeight(lines.length));
    return frame + words;
  });
  return { height: y + row - top, svg: drawn.join('') };
}
