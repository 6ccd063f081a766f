import { textWidth, type Weight } from '../charts/textWidth.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { wrapWords } from './wrapWords.ts';

/** Lines of text or a drawing, which stand below one another on a card. */
export type CardBlock = CardLines | CardDrawing;

interface Placed {
  /** Paper over it, px. */
  readonly above: number;
  /** Whether paper that is left over may go over it. */
  readonly gives: boolean;
}

export interface CardLines extends Placed, TextStyle {
  readonly kind: 'lines';
  readonly lines: readonly string[];
}

interface TextStyle {
  readonly size: number;
  readonly weight: Weight;
  readonly serif: boolean;
  readonly colour: 'ink' | 'ink-2';
  /** A bar beside it, as the statement of interest has on every page. */
  readonly marked: boolean;
}

/** Marks from the top left corner on; colours are names of tokens, see `literalColours`. */
interface CardDrawing extends Placed {
  readonly kind: 'drawing';
  readonly height: number;
  readonly marks: string;
}

/** Literata at weight 600 beside Source Sans 3: no text of ours is set wider than this. */
const literataFactor = 1.24;

const markWidth = 6;
/** From the left edge of the bar to the words beside it, in letter sizes. */
const markRoom = 0.95;

/** From one line to the next, px; large letters need less. */
const leadingOf = (size: number): number => Math.round(size * (size < 40 ? 1.25 : 1.2));

export const heightOf = (block: CardBlock): number =>
  block.kind === 'drawing' ? block.height : block.lines.length * leadingOf(block.size);

/** Text in lines of at most `room` px; none where there is nothing to say. */
export function textBlock(
  told: string,
  room: number,
  given: Partial<TextStyle & Placed> & { readonly size: number; readonly above: number },
): readonly CardLines[] {
  const style = { weight: 400, serif: false, colour: 'ink', marked: false, gives: false, ...given } as const;
  const { size, weight, serif, marked } = style;
  const set = size * (serif ? literataFactor : 1);
  const width = room - (marked ? Math.round(size * markRoom) : 0);
  const lines = wrapWords(told, set, weight, width);
  return lines.length === 0 ? [] : [{ kind: 'lines', ...style, lines }];
}

/** What marks a report, in a frame as a stamp is, and who publishes it, beside the stamp or below it. */
export function stampBlock(
  stamp: string,
  publisher: string,
  room: number,
  { size, above }: { readonly size: number; readonly above: number },
): readonly CardBlock[] {
  const own = { size, weight: 600, colour: 'ink-2' } as const;
  if (stamp === '') return textBlock(publisher, room, { ...own, above });
  const stroke = Math.max(2, Math.round(size / 10));
  const inset = Math.round(size * 0.42);
  const leading = leadingOf(size);
  const width = Math.ceil(textWidth(stamp, size, 600)) + 2 * inset;
  const height = leading + 2 * stroke;
  const gap = Math.round(size * 0.6);
  const beside = width + gap + textWidth(publisher, size, 600) <= room;
  const baseline = stroke + Math.round(size * 0.96);
  const edge = stroke / 2;
  const marks =
    `<rect x="${edge}" y="${edge}" width="${width - stroke}" height="${height - stroke}" fill="none" stroke="var(--ink)" stroke-width="${stroke}"/>` +
    `<g font-size="${size}" font-weight="600"><text x="${inset}" y="${baseline}" fill="var(--ink)">${escapeXml(stamp)}</text>` +
    (beside
      ? `<text x="${width + gap}" y="${baseline}" fill="var(--ink-2)">${escapeXml(publisher)}</text>`
      : '') +
    '</g>';
  return [
    { kind: 'drawing', height, marks, above, gives: false },
    ...(beside ? [] : textBlock(publisher, room, { ...own, above: Math.round(size * 0.3) })),
  ];
}

/** A block with its top left corner at a place. */
export function drawnBlock(block: CardBlock, x: number, y: number): string {
  const sans = "'Source Sans 3', system-ui, sans-serif";
  if (block.kind === 'drawing')
    return `<g transform="translate(${x},${y})" font-family="${sans}">${block.marks}</g>`;
  const { lines, size, weight, serif, colour, marked } = block;
  const leading = leadingOf(size);
  const left = marked ? x + Math.round(size * markRoom) : x;
  const bar = marked
    ? `<rect x="${x}" y="${y + 2}" width="${markWidth}" height="${lines.length * leading - 2}" fill="var(--ink)"/>`
    : '';
  const told = lines
    .map(
      (line, row) =>
        `<text x="${left}" y="${Math.round(y + row * leading + size * 0.96)}">${escapeXml(line)}</text>`,
    )
    .join('');
  return `${bar}<g font-family="${serif ? 'Literata, Georgia, serif' : sans}" font-size="${size}" font-weight="${weight}" fill="var(--${colour})">${told}</g>`;
}
