import { literataWidth } from '../charts/literataWidth.ts';
import { textWidth, type Weight } from '../charts/textWidth.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { slack } from './pictureForm.ts';

/** A type of a picture, by the names that a renderer looks for. */
interface Type {
  readonly family: string;
  readonly size: number;
  readonly weight: Weight;
  /** Width of a text in thousandths of the size: whole, and the sum of its letters' widths. */
  readonly advanceOf: (text: string) => number;
}

export function serif(size: number): Type {
  return {
    family: 'Literata, Georgia, serif',
    size,
    weight: 600,
    advanceOf: (text) => literataWidth(text, 1000),
  };
}

export function sans(size: number, weight: Weight): Type {
  return {
    family: "'Source Sans 3', system-ui, sans-serif",
    size,
    weight,
    advanceOf: (text) => textWidth(text, 1000, weight),
  };
}

/** Width of a line, px. */
export function widthOf(line: string, type: Type): number {
  return pixels(type.advanceOf(line), type);
}

function pixels(advance: number, { size }: Type): number {
  return (advance * size) / 1000;
}

/**
 * Lines of a text that leave part of `room` px empty at their end. What is too long for a line, as an address may be, goes
 * on in the next one.
 */
export function wrapped(text: string, type: Type, room: number): readonly string[] {
  const all = measured(text, type, room);
  return linesOf(all, filled(all));
}

/**
 * As `wrapped`, but of all ways to break the text into as few lines the one with the least sum of squared widths, so that
 * none is left with a single short word.
 */
export function wrappedEvenly(text: string, type: Type, room: number): readonly string[] {
  const all = measured(text, type, room);
  const widths = all.words.map((_, from) => all.longest(from));
  // Of the words from each place on, the best lines of as many as were asked for last; none where there is no room.
  let ways: readonly (Broken | null)[] = [...all.words.map(() => null), { unevenness: 0, counts: [] }];
  for (let line = filled(all).length; line > 0; line -= 1)
    ways = ways.map((_, from) => leastUneven(widths[from] ?? [], ways.slice(from)));
  return linesOf(all, ways[0]?.counts ?? []);
}

/** As `wrapped`, for running text: even lines only where the last one would hold a single word. */
export function wrappedWithoutWidow(text: string, type: Type, room: number): readonly string[] {
  const lines = wrapped(text, type, room);
  const leavesOne = lines.length > 1 && lines.at(-1)?.includes(' ') === false;
  return leavesOne ? wrappedEvenly(text, type, room) : lines;
}

/** A way to break words into lines. */
interface Broken {
  /** Sum of the squared widths of its lines, px². */
  readonly unevenness: number;
  /** Words of each line. */
  readonly counts: readonly number[];
}

/**
 * A first line and the best of what may follow it.
 *
 * @param widths of lines of one word, two words and so on, px
 * @param after `after[n]` is the best for all but the first n words
 */
function leastUneven(widths: readonly number[], after: readonly (Broken | null)[]): Broken | null {
  let best: Broken | null = null;
  for (const [at, width] of widths.entries()) {
    const rest = after[at + 1] ?? null;
    if (rest === null) continue;
    const unevenness = rest.unevenness + width ** 2;
    if (best === null || unevenness < best.unevenness)
      best = { unevenness, counts: [at + 1, ...rest.counts] };
  }
  return best;
}

interface Word {
  readonly word: string;
  /** Thousandths of the size. */
  readonly advance: number;
}

interface Measured {
  readonly words: readonly Word[];
  /** Widths of lines from a word on, px: of one word, of two and so on as long as there is room. */
  readonly longest: (from: number) => readonly number[];
}

/** The words of a text, each measured once: a line is as wide as its words and the spaces between them. */
function measured(text: string, type: Type, room: number): Measured {
  const most = room / (1 + slack);
  const { advanceOf } = type;
  const words = text
    .split(/\s+/)
    .filter((word) => word !== '')
    .map((word) => ({ word, advance: advanceOf(word) }))
    .flatMap((one) => (pixels(one.advance, type) <= most ? [one] : broken(one.word, type, most)));
  const space = advanceOf(' ');
  const longest = (start: number): readonly number[] => {
    const widths: number[] = [];
    let advance = -space;
    for (let at = start; at < words.length; at += 1) {
      advance += space + (words[at]?.advance ?? NaN);
      const width = pixels(advance, type);
      if (width > most) break;
      widths.push(width);
    }
    return widths;
  };
  return { words, longest };
}

/** Words of each line, as many as there is room for. */
function filled({ words, longest }: Measured): readonly number[] {
  const counts: number[] = [];
  let from = 0;
  while (from < words.length) {
    const count = Math.max(1, longest(from).length);
    counts.push(count);
    from += count;
  }
  return counts;
}

/** @param counts words of each line */
function linesOf({ words }: Measured, counts: readonly number[]): readonly string[] {
  let from = 0;
  return counts.map((count) => {
    const line = words.slice(from, from + count);
    from += count;
    return line.map(({ word }) => word).join(' ');
  });
}

/** Pieces of a word of at most `most` px, after a slash or hyphen where there is one. */
function broken(word: string, type: Type, most: number): readonly Word[] {
  const fits = (text: string): boolean => widthOf(text, type) <= most;
  const pieces: string[] = [];
  let piece = '';
  for (const part of word.split(/(?<=[/-])/).flatMap((one) => (fits(one) ? [one] : [...one]))) {
    if (!fits(piece + part) && piece !== '') {
      pieces.push(piece);
      piece = '';
    }
    piece += part;
  }
  return [...pieces, piece].map((one) => ({ word: one, advance: type.advanceOf(one) }));
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
