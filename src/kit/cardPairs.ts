import type { RingAndBar } from '../charts/ringAndBar.ts';
import { ringAndBarDrawing, ringAndBarSize } from '../charts/ringAndBarDrawing.ts';
import { textWidth } from '../charts/textWidth.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { textBlock, type CardBlock } from './cardBlock.ts';

interface PairsStyle {
  /** How wide words and pictures may be together, px. */
  readonly room: number;
  /** Size of the words, px; numbers of the scale are as large. */
  readonly text: number;
  /** How many times as large as in a list ring and bar are. */
  readonly picture: number;
}

/** Wider words than this share of the room stand over their bar, since little would be left for it. */
const widestBeside = 0.58;

/** Each pair in words over its ring and bar, all on one scale, which is named below the last. */
export function pairsBelow(
  sign: RingAndBar,
  words: readonly string[],
  { room, text, picture }: PairsStyle,
): readonly CardBlock[] {
  const size = { ...ringAndBarSize(room, picture), text };
  return sign.rows.flatMap((row, index): CardBlock[] => {
    const last = index === sign.rows.length - 1;
    const drawing = ringAndBarDrawing({ ...sign, rows: [row] }, `card-${index}`, size, { scale: last });
    const above = Math.round(text * (index === 0 ? 0.9 : 0.5));
    return [
      ...textBlock(words[index] ?? '', room, { size: text, weight: 600, above, gives: index === 0 }),
      {
        kind: 'drawing',
        height: drawing.height,
        marks: drawing.marks,
        above: Math.round(text * 0.36),
        gives: false,
      },
    ];
  });
}

/** The same with the words beside the bars, for a card that is wide; below one another where words are long. */
export function pairsBeside(
  sign: RingAndBar,
  words: readonly string[],
  { room, text, picture }: PairsStyle,
): readonly CardBlock[] {
  const shown = words.slice(0, sign.rows.length);
  const widest = Math.ceil(Math.max(...shown.map((told) => textWidth(told, text, 600))));
  if (widest > room * widestBeside) return pairsBelow(sign, words, { room, text, picture });
  const left = widest + text;
  const size = { ...ringAndBarSize(room - left, picture), text };
  const row = Math.max(size.row, Math.round(text * 1.5));
  const { height, marks } = ringAndBarDrawing(sign, 'card', { ...size, row });
  const told = shown
    .map(
      (one, index) => `<text y="${Math.round((index + 0.5) * row + text * 0.34)}">${escapeXml(one)}</text>`,
    )
    .join('');
  const drawn = `<g font-size="${text}" font-weight="600" fill="var(--ink)">${told}</g><g transform="translate(${left},0)">${marks}</g>`;
  return [{ kind: 'drawing', height, marks: drawn, above: Math.round(text * 0.9), gives: true }];
}
