import { literalColours } from '../charts/palette.ts';
import { ringAndBarOf } from '../charts/ringAndBar.ts';
import { drawnBlock, heightOf, type CardBlock } from './cardBlock.ts';
import { cardBlocks } from './cardBlocks.ts';
import type { CardForm } from './cardForm.ts';
import type { CardFrame } from './cardFrame.ts';
import { planThatFits, type CardPlan } from './cardPlan.ts';
import { cardWords, type CardWords } from './cardWords.ts';
import { interestInBrief } from './interestInShort.ts';
import type { Report } from './report.ts';

/** A card whose colours are values. */
export interface Card {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** How far down it is set, px. */
  readonly bottom: number;
  /** The plan that was taken, and whether all of it has room. */
  readonly plan: CardPlan;
  readonly fits: boolean;
}

/**
 * A report's first answer as a picture by itself: stamp, who publishes, what was measured, the finding, what to keep in
 * mind, ring and bar of the first pairs, what the shop has to gain, who hit and when, and where the report stands.
 * Nothing is cut off in a sentence: `planThatFits`.
 */
export function cardLayout(report: Report, form: CardForm): Card {
  const { frame, plans } = form;
  const words = cardWords(report);
  const sign = report.source.front.status === 'withdrawn' ? null : ringAndBarOf(report.telling);
  const most = frame.height - frame.below;
  const set = (plan: CardPlan): SetCard => {
    const content = { words, interest: interestIn(plan, words, report), sign };
    const { all, finding } = cardBlocks(content, plan, form);
    const bottom = all.reduce((y, block) => y + block.above + heightOf(block), frame.above);
    const lines = finding.reduce((sum, block) => sum + block.lines.length, 0);
    return { all, bottom, fits: bottom <= most && lines <= plan.lines };
  };
  const plan = planThatFits(plans, (one) => set(one).fits);
  const { all, bottom, fits } = set(plan);
  const { width, height } = frame;
  return { svg: drawn(spread(all, most - bottom), frame), width, height, bottom, plan, fits };
}

interface SetCard extends Pick<Card, 'bottom' | 'fits'> {
  readonly all: readonly CardBlock[];
}

function interestIn({ interest }: CardPlan, { interest: told }: CardWords, report: Report): string {
  if (interest === 'whole') return told.whole;
  return interest === 'few-words' ? told.fewWords : interestInBrief(report, interest);
}

/** What is left over goes in equal parts above what parts the card. */
function spread(blocks: readonly CardBlock[], left: number): readonly CardBlock[] {
  const takers = blocks.filter(({ gives }) => gives).length;
  const each = takers === 0 ? 0 : Math.floor(Math.max(0, left) / takers);
  return blocks.map((block) => (block.gives ? { ...block, above: block.above + each } : block));
}

/** Height of the line along the upper edge, px. */
const edge = 10;

function drawn(blocks: readonly CardBlock[], { width, height, side, above }: CardFrame): string {
  let y = above;
  const parts = blocks.map((block) => {
    y += block.above;
    const part = drawnBlock(block, side, y);
    y += heightOf(block);
    return part;
  });
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">` +
    `<rect width="${width}" height="${height}" fill="var(--paper)"/>` +
    `<rect width="${width}" height="${edge}" fill="var(--ink)"/>${parts.join('')}</svg>\n`;
  // In tags only: a name may read like a colour.
  return svg.replaceAll(/<[^>]*>/g, (tag) => literalColours(tag, 'light'));
}
