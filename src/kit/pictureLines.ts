import { literataWidth } from '../charts/literataWidth.ts';
import { textWidth, wrapMeasured, type Measure, type Weight } from '../charts/textWidth.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { slack } from './pictureForm.ts';

/** A type of a picture, by the names that a renderer looks for. */
export interface Type {
  readonly family: string;
  readonly size: number;
  readonly weight: Weight;
  readonly widthOf: Measure;
}

export function serif(size: number): Type {
  return {
    family: 'Literata, Georgia, serif',
    size,
    weight: 600,
    widthOf: (line) => literataWidth(line, size),
  };
}

export function sans(size: number, weight: Weight): Type {
  return {
    family: "'Source Sans 3', system-ui, sans-serif",
    size,
    weight,
    widthOf: (line) => textWidth(line, size, weight),
  };
}

/**
 * Lines of a text that leave part of `room` px empty at their end. What is too long for a line, as an address may be, goes
 * on in the next one.
 */
export function wrapped(text: string, { widthOf }: Type, room: number): readonly string[] {
  const most = room / (1 + slack);
  const words = text
    .split(' ')
    .flatMap((word) => (widthOf(word) <= most ? [word] : broken(word, widthOf, most)));
  return wrapMeasured(words.join(' '), widthOf, most);
}

/** Pieces of a word of at most `most` px, after a slash or hyphen where there is one. */
function broken(word: string, widthOf: Measure, most: number): readonly string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const part of word.split(/(?<=[/-])/).flatMap((one) => (widthOf(one) <= most ? [one] : [...one]))) {
    if (widthOf(piece + part) > most && piece !== '') {
      pieces.push(piece);
      piece = '';
    }
    piece += part;
  }
  return [...pieces, piece];
}

/** Where lines stand: their left end or middle at `x`, the foot of the first one at `y`. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly leading: number;
  readonly colour: string;
  readonly centred?: boolean;
}

/** Lines below one another. */
export function drawnLines(
  lines: readonly string[],
  { family, size, weight }: Type,
  { x, y, leading, colour, centred = false }: Place,
): string {
  const texts = lines.map((line, row) => `<text x="${x}" y="${y + row * leading}">${escapeXml(line)}</text>`);
  const anchor = centred ? ' text-anchor="middle"' : '';
  return `<g font-family="${family}" font-size="${size}" font-weight="${weight}"${anchor} fill="${colour}">${texts.join('')}</g>`;
}
