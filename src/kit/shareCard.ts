import { literalColours, palette } from '../charts/palette.ts';
import { ringAndBarOf, type RingAndBar } from '../charts/ringAndBar.ts';
import { ringAndBarDrawing, ringAndBarSize, type RingAndBarDrawing } from '../charts/ringAndBarDrawing.ts';
import { wrapText, type Weight } from '../charts/textWidth.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { absoluteAddress, spokenAddress } from './absoluteAddress.ts';
import { interestInBrief } from './interestInShort.ts';
import type { Report } from './report.ts';
import { shareCardWords, type ShareCardWords } from './shareCardWords.ts';

/** Size of the picture that a shared link shows, px: what is of another shape is cropped. */
export const cardWidth = 1200;
export const cardHeight = 630;

/** Least letters, px: a card is shown at a third of its size. */
export const leastText = 22;

const margin = 56;
/** Least paper under the last line, px. */
const foot = 20;
const room = cardWidth - 2 * margin;

/** Literata at weight 600 beside Source Sans 3: no text of ours is set wider than this. */
const literataFactor = 1.24;

/** How the card is set; each plan gives up a little more than the one before, and never any of the interest. */
interface Plan {
  readonly finding: number;
  /** How many times the picture of a list; 0 leaves the picture out. */
  readonly picture: number;
  readonly text: number;
  readonly address: boolean;
  readonly caution: 'told' | 'if-it-decides';
  readonly whom: 0 | 1;
  /** Longest interest, characters: whole statements give way, and that there are more is said. */
  readonly interest: number;
}

const first: Plan = {
  finding: 52,
  picture: 3,
  text: 25,
  address: true,
  caution: 'told',
  whom: 0,
  interest: Infinity,
};

const steps: readonly Partial<Plan>[] = [
  {},
  { finding: 46 },
  { address: false },
  { finding: 42 },
  { text: 23 },
  { finding: 38 },
  { caution: 'if-it-decides' },
  { text: leastText },
  { finding: 34 },
  { picture: 2.5 },
  { whom: 1 },
  { picture: 2 },
  { finding: 30 },
  { picture: 0 },
  { finding: 26 },
  { finding: leastText },
  { interest: 700 },
  { interest: 500 },
  { interest: 300 },
];

const plans: readonly Plan[] = steps.reduce<readonly Plan[]>(
  (made, step) => [...made, { ...(made.at(-1) ?? first), ...step }],
  [],
);

/** Lines of the card from the top down, or a drawing. */
type Block =
  | {
      readonly kind: 'lines';
      readonly lines: readonly string[];
      readonly size: number;
      readonly weight: Weight;
      readonly serif: boolean;
      readonly colour: 'ink' | 'ink-2';
      /** A bar beside it, as the statement of interest has on every page. */
      readonly marked: boolean;
      /** Whether what closes the card begins with it. */
      readonly closes: boolean;
      readonly above: number;
    }
  | { readonly kind: 'drawing'; readonly drawing: RingAndBarDrawing; readonly above: number };

/** A card's SVG whose colours are values, and whether all of it has room. */
export interface ShareCard {
  readonly svg: string;
  /** How far down it is set, px. */
  readonly bottom: number;
}

/**
 * The picture of a shared link, 1200 x 630: who publishes, the finding, ring and bar of the first pair, who hit and what
 * the shop has to gain. Nothing is cut off in a sentence: the first plan for which there is room is taken.
 */
export function shareCard(report: Report): ShareCard {
  const sign = ringAndBarOf(report.telling);
  const words = shareCardWords(report);
  const set = plans.map((plan) => () => blocksOf(report, words, sign, plan));
  for (const [index, make] of set.entries()) {
    const blocks = make();
    const bottom = bottomOf(blocks);
    if (bottom <= cardHeight - foot || index === set.length - 1)
      return { svg: drawn(lowered(blocks, cardHeight - 2 * foot - bottom)), bottom };
  }
  throw new Error('There is no plan for a card.');
}

function blocksOf(
  report: Report,
  words: ShareCardWords,
  sign: RingAndBar | null,
  plan: Plan,
): readonly Block[] {
  const { publisher, standing, head, finding, pair, caution, cautionDecides, whom } = words;
  const absolute = absoluteAddress(report.source.shop);
  const text = (
    told: string,
    style: Partial<Extract<Block, { readonly kind: 'lines' }>> & { readonly above: number },
  ): readonly Block[] => {
    const { size = plan.text, weight = 400, serif = false, marked = false, closes = false } = style;
    const lines = wrapText(told, size * (serif ? literataFactor : 1), weight, room - (marked ? 24 : 0));
    if (lines.length === 0) return [];
    return [{ kind: 'lines', colour: 'ink', ...style, size, weight, serif, marked, closes, lines }];
  };
  const picture =
    sign === null || plan.picture === 0
      ? []
      : [
          ...text(pair ?? '', { above: 22, weight: 600 }),
          {
            kind: 'drawing' as const,
            drawing: ringAndBarDrawing({ ...sign, rows: sign.rows.slice(0, 1) }, 'card', {
              ...ringAndBarSize(room, plan.picture),
              text: leastText,
            }),
            above: 10,
          },
          ...text(keyOf(sign), { size: leastText, above: 2, colour: 'ink-2' }),
        ];
  const interest = plan.interest === Infinity ? words.interest : interestInBrief(report, plan.interest);
  return [
    ...text(`${publisher}${standing === '' ? '' : `. ${standing}`}`, {
      above: 0,
      weight: 600,
      colour: 'ink-2',
    }),
    ...text(head, { above: 14, colour: 'ink-2' }),
    ...text(finding, { above: 6, size: plan.finding, weight: 600, serif: true }),
    ...(plan.caution === 'told' || cautionDecides ? text(caution, { above: 10 }) : []),
    ...picture,
    ...text(whom[plan.whom], { above: 16, closes: true }),
    ...text(interest, { above: 14, marked: true }),
    ...(plan.address && absolute !== null
      ? text(spokenAddress(absolute(`/reports/${report.source.slug}/`)), {
          above: 14,
          size: leastText,
          colour: 'ink-2',
        })
      : []),
  ];
}

const keyOf = ({ matters, rows: [row] }: RingAndBar): string =>
  [
    'Ring: best estimate. Bar: likely range',
    ...(row?.credit === 'open' ? [', open as the cause is'] : []),
    matters > 0 ? '. Hatched: too small to matter.' : '.',
  ].join('');

/** What is left over goes above who hit and what the shop has to gain: they close the card. */
function lowered(blocks: readonly Block[], left: number): readonly Block[] {
  return blocks.map((block) =>
    block.kind === 'lines' && block.closes ? { ...block, above: block.above + Math.max(0, left) } : block,
  );
}

const leadingOf = (size: number): number => Math.round(size * 1.26);

const heightOf = (block: Block): number =>
  block.kind === 'drawing' ? block.drawing.height : block.lines.length * leadingOf(block.size);

const bottomOf = (blocks: readonly Block[]): number =>
  blocks.reduce((y, block) => y + block.above + heightOf(block), margin - 10);

function drawn(blocks: readonly Block[]): string {
  let y = margin - 10;
  const parts = blocks.map((block) => {
    y += block.above;
    const top = y;
    y += heightOf(block);
    return block.kind === 'drawing' ? drawingAt(block.drawing, top) : linesAt(block, top);
  });
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${cardWidth}" height="${cardHeight}" viewBox="0 0 ${cardWidth} ${cardHeight}">` +
    `<rect width="${cardWidth}" height="${cardHeight}" fill="var(--paper)"/>` +
    `<rect width="${cardWidth}" height="10" fill="var(--ink)"/>${parts.join('')}</svg>\n`;
  // In tags only: a name may read like a colour.
  return svg.replaceAll(/<[^>]*>/g, (tag) => literalColours(tag, 'light'));
}

function drawingAt({ marks }: RingAndBarDrawing, y: number): string {
  return `<g transform="translate(${margin},${y})" font-family="'Source Sans 3', system-ui, sans-serif">${marks}</g>`;
}

function linesAt(block: Extract<Block, { readonly kind: 'lines' }>, y: number): string {
  const { lines, size, weight, serif, colour, marked } = block;
  const leading = leadingOf(size);
  const family = serif ? 'Literata, Georgia, serif' : "'Source Sans 3', system-ui, sans-serif";
  const x = marked ? margin + 24 : margin;
  const bar = marked
    ? `<rect x="${margin}" y="${y + 2}" width="6" height="${lines.length * leading - 2}" fill="${palette.ink.light}"/>`
    : '';
  const told = lines
    .map(
      (line, row) =>
        `<text x="${x}" y="${Math.round(y + row * leading + size * 0.96)}">${escapeXml(line)}</text>`,
    )
    .join('');
  return `${bar}<g font-family="${family}" font-size="${size}" font-weight="${weight}" fill="var(--${colour})">${told}</g>`;
}
