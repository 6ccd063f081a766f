import type { Advance } from '../charts/advanceTable.ts';
import { literataAdvance, literataWidth } from '../charts/literataWidth.ts';
import {
  sourceSansAdvance,
  textWidth,
  wrapMeasured,
  type Measure,
  type Weight,
} from '../charts/textWidth.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { slack } from './pictureForm.ts';

/** A type of a picture, by the names that a renderer looks for. */
export interface Type {
  readonly family: string;
  readonly size: number;
  readonly weight: Weight;
  readonly widthOf: Measure;
  /** The same in whole thousandths of an em, which add up without rounding. */
  readonly advanceOf: Advance;
}

export function serif(size: number): Type {
  return {
    family: 'Literata, Georgia, serif',
    size,
    weight: 600,
    widthOf: (line) => literataWidth(line, size),
    advanceOf: literataAdvance,
  };
}

export function sans(size: number, weight: Weight): Type {
  return {
    family: "'Source Sans 3', system-ui, sans-serif",
    size,
    weight,
    widthOf: (line) => textWidth(line, size, weight),
    advanceOf: sourceSansAdvance[weight],
  };
}

/**
 * Lines of a text that leave part of `room` px empty at their end. What is too long for a line, as an address may be, goes
 * on in the next one.
 */
export function wrapped(text: string, { widthOf }: Type, room: number): readonly string[] {
  const most = room / (1 + slack);
  return wrapMeasured(withPieces(text, widthOf, most), widthOf, most);
}

/**
 * As `wrapped`, but of all ways to break the text into as few lines the one with the least sum of squared widths, so that
 * none is left with a single short word.
 */
export function wrappedEvenly(text: string, type: Type, room: number): readonly string[] {
  const { widthOf, advanceOf, size } = type;
  const most = room / (1 + slack);
  const whole = withPieces(text, widthOf, most);
  const count = wrapMeasured(whole, widthOf, most).length;
  const words = whole.split(/\s+/).filter((word) => word !== '');
  const measured: MeasuredWords = { words, advances: words.map(advanceOf), space: advanceOf(' '), size };
  // Of the words from each place on, the best lines of as many as were asked for last; none where there is no room.
  let ways: readonly (Broken | null)[] = [
    ...words.map(() => null),
    { unevenness: 0, end: words.length, rest: null },
  ];
  for (let line = 0; line < count; line += 1)
    ways = ways.map((_, from) => leastUneven(measured, from, ways, most));
  return linesOf(words, ways[0] ?? null);
}

/** As `wrapped`, for running text: even lines only where the last one would hold a single word. */
export function wrappedWithoutWidow(text: string, type: Type, room: number): readonly string[] {
  const lines = wrapped(text, type, room);
  const leavesOne = lines.length > 1 && lines.at(-1)?.includes(' ') === false;
  return leavesOne ? wrappedEvenly(text, type, room) : lines;
}

/** Words of one type, each measured once. */
interface MeasuredWords {
  readonly words: readonly string[];
  /** Thousandths of an em. */
  readonly advances: readonly number[];
  readonly space: number;
  /** px */
  readonly size: number;
}

/** A way to break words into lines. */
interface Broken {
  /** Sum of the squared widths of its lines, px². */
  readonly unevenness: number;
  /** The first word that is no more on its first line; what follows starts there. */
  readonly end: number;
  readonly rest: Broken | null;
}

/** A first line of the words from one on and the best of what may follow it: `ways[n]` is the best from word n on. */
function leastUneven(
  { advances, space, size }: MeasuredWords,
  from: number,
  ways: readonly (Broken | null)[],
  most: number,
): Broken | null {
  let best: Broken | null = null;
  let advance = -space;
  for (let at = from; at < advances.length; at += 1) {
    advance += space + (advances[at] ?? 0);
    const width = (advance * size) / 1000;
    if (width > most) break;
    const rest = ways[at + 1] ?? null;
    if (rest === null) continue;
    const unevenness = rest.unevenness + width ** 2;
    if (best === null || unevenness < best.unevenness) best = { unevenness, end: at + 1, rest };
  }
  return best;
}

function linesOf(words: readonly string[], way: Broken | null): readonly string[] {
  const lines: string[] = [];
  let from = 0;
  for (let line = way; line !== null && from < words.length; line = line.rest) {
    lines.push(words.slice(from, line.end).join(' '));
    from = line.end;
  }
  return lines;
}

/** The text with spaces in words that are too long for a line. */
function withPieces(text: string, widthOf: Measure, most: number): string {
  return text
    .split(' ')
    .flatMap((word) => (widthOf(word) <= most ? [word] : broken(word, widthOf, most)))
    .join(' ');
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
