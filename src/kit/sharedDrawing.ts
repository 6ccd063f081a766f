import { readTags } from './htmlTags.ts';

/** A chart's drawing as `renderChart` writes it, with what its copy is marked with. */
interface Drawing {
  readonly mark: string;
  readonly svg: string;
}

/** Shared is worth its while below this part of the length of both. */
const worthwhile = 0.85;

/**
 * One drawing for two that differ in words and steps of a scale: what both have once, the rest of each in a group
 * marked `data-units`, that of `other` not shown. The comments let editions without script leave it out. Null where
 * the two are not of one size and name, or have little in common.
 */
export function sharedDrawing(own: Drawing, other: Drawing): string | null {
  const [a, b] = [readPiece(own.svg), readPiece(other.svg)];
  if (a.start !== b.start) return null;
  const merged = mergePiece(a, b, (as, bs) => {
    const copies = [as, bs].map(textOf);
    // An id would stand there twice, and a name is a name in its own place only.
    if (copies.some((copy) => /\sid="|<title/.test(copy))) return null;
    const [shown = '', hidden = ''] = copies;
    return (
      (shown === '' ? '' : `<g data-units="${own.mark}">${shown}</g>`) +
      (hidden === ''
        ? ''
        : `<!--other units--><g data-units="${other.mark}" display="none">${hidden}</g><!--/other units-->`)
    );
  });
  return merged !== null && merged.length <= worthwhile * (own.svg.length + other.svg.length) ? merged : null;
}

/** An element or words. */
interface Piece {
  /** The whole of it. */
  readonly text: string;
  /** Its start tag; of words, nothing. */
  readonly start: string;
  readonly end: string;
  readonly inside: readonly Piece[];
}

const textOf = (pieces: readonly Piece[]): string => pieces.map(({ text }) => text).join('');

/** Writes what two runs of pieces do not share; null where that cannot be. */
type WriteRuns = (as: readonly Piece[], bs: readonly Piece[]) => string | null;

/** An element whose end has not come. */
interface OpenPiece {
  readonly from: number;
  readonly start: string;
  readonly inside: Piece[];
}

/** The one element of such a text. */
function readPiece(svg: string): Piece {
  const whole: OpenPiece = { from: 0, start: '', inside: [] };
  const open = [whole];
  const last = (): OpenPiece => open.at(-1) ?? whole;
  readTags(svg, {
    opened: ({ start: from, end, alone }) => {
      const start = svg.slice(from, end);
      if (alone) last().inside.push({ text: start, start, end: '', inside: [] });
      else open.push({ from, start, inside: [] });
    },
    closed: ({ start: from, end: to }) => {
      const { from: begun, start, inside } = open.pop() ?? whole;
      last().inside.push({ text: svg.slice(begun, to), start, end: svg.slice(from, to), inside });
    },
    text: (from, to) => last().inside.push({ text: svg.slice(from, to), start: '', end: '', inside: [] }),
  });
  const [element] = whole.inside;
  if (element === undefined) throw new Error('A drawing is an element.');
  return element;
}

function mergePiece(a: Piece, b: Piece, write: WriteRuns): string | null {
  const inside = mergePieces(a.inside, b.inside, write);
  return inside === null ? null : a.start + inside + a.end;
}

/** Whether only what lies inside can differ; words are no place for a group. */
const alikeOutside = (a: Piece, b: Piece): boolean =>
  a.start === b.start &&
  [a, b].every(({ inside }) => inside.length > 0 && inside.every(({ start }) => start !== ''));

function mergePieces(as: readonly Piece[], bs: readonly Piece[], write: WriteRuns): string | null {
  const least = Math.min(as.length, bs.length);
  let first = 0;
  while (first < least && as[first]?.text === bs[first]?.text) first += 1;
  let last = 0;
  while (last < least - first && as.at(-1 - last)?.text === bs.at(-1 - last)?.text) last += 1;
  const [left, right] = [as.slice(first, as.length - last), bs.slice(first, bs.length - last)];
  const merged = left.length === right.length ? mergeInTurn(left, right, write) : write(left, right);
  if (merged === null) return null;
  return textOf(as.slice(0, first)) + merged + textOf(as.slice(as.length - last));
}

/** Of as many pieces, each with its counterpart. */
function mergeInTurn(as: readonly Piece[], bs: readonly Piece[], write: WriteRuns): string | null {
  let merged = '';
  let run: (readonly [a: Piece, b: Piece])[] = [];
  const endRun = (): boolean => {
    const written =
      run.length === 0
        ? ''
        : write(
            run.map(([a]) => a),
            run.map(([, b]) => b),
          );
    run = [];
    merged += written ?? '';
    return written !== null;
  };
  for (const [index, a] of as.entries()) {
    const b = bs[index];
    if (b === undefined) return null;
    if (a.text !== b.text && !alikeOutside(a, b)) {
      run.push([a, b]);
      continue;
    }
    const same = a.text === b.text ? a.text : mergePiece(a, b, write);
    if (!endRun() || same === null) return null;
    merged += same;
  }
  return endRun() ? merged : null;
}
