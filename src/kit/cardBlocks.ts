import type { RingAndBar } from '../charts/ringAndBar.ts';
import { sayRingAndBar } from '../prose/english/kit/cardWords.ts';
import { sentence } from '../prose/words.ts';
import { stampBlock, textBlock, type CardBlock, type CardLines } from './cardBlock.ts';
import type { CardForm } from './cardForm.ts';
import { roomOf } from './cardFrame.ts';
import { pairsBelow, pairsBeside } from './cardPairs.ts';
import type { CardPlan } from './cardPlan.ts';
import { findingWithin, type CardWords } from './cardWords.ts';

/** What a card holds from the top down, and of it the finding, which has a number of lines at most. */
export interface CardBlocks {
  readonly all: readonly CardBlock[];
  readonly finding: readonly CardLines[];
}

/**
 * What a card holds under a plan.
 *
 * @param interest in the words for which the plan has room
 * @param sign ring and bar of its first pairs; null where none was judged
 */
export function cardBlocks(
  words: CardWords,
  interest: string,
  sign: RingAndBar | null,
  plan: CardPlan,
  { frame, pairs, head }: Pick<CardForm, 'frame' | 'pairs' | 'head'>,
): CardBlocks {
  const { text, foot } = plan;
  const room = roomOf(frame);
  const together = head === 'beside-publisher';
  const publisher = together ? joined(words.publisher, words.head && sentence(words.head)) : words.publisher;
  const finding = textBlock(findingWithin(words, plan.words), room, {
    size: plan.finding,
    weight: 600,
    serif: true,
    above: Math.round(text * 0.2),
  });
  const caution = cautionIn(words, plan);
  const shown = sign === null || pairs === 'told' ? null : { ...sign, rows: sign.rows.slice(0, plan.pairs) };
  const drawn = shown !== null && shown.rows.length > 0 && plan.picture > 0;
  const place = pairs === 'beside' ? pairsBeside : pairsBelow;
  const all = [
    ...stampBlock(words.stamp, publisher, room, { size: text, above: 0 }),
    ...(together
      ? []
      : textBlock(words.head, room, { size: text, above: Math.round(text * 0.5), colour: 'ink-2' })),
    ...finding,
    ...textBlock(pairs === 'told' ? joined(words.pairs[0] ?? '', caution) : caution, room, {
      size: text,
      above: Math.round(text * 0.35),
    }),
    ...(drawn ? place(shown, words.pairs, { room, text, picture: plan.picture }) : []),
    ...(drawn ? textBlock(keyOf(shown), room, { size: text, above: 2, colour: 'ink-2' }) : []),
    ...textBlock(interest, room, { size: text, above: Math.round(text * 0.55), marked: true, gives: true }),
    ...textBlock(joined(words.whom[plan.whom], words.where), room, {
      size: foot,
      above: Math.round(text * 0.45),
      colour: 'ink-2',
    }),
  ];
  return { all, finding };
}

const joined = (...told: readonly string[]): string => told.filter((words) => words !== '').join(' ');

function cautionIn({ caution }: CardWords, plan: CardPlan): string {
  if (caution === null) return '';
  if (plan.caution === 'whole') return caution.whole;
  return plan.caution === 'brief' || caution.decides ? caution.brief : '';
}

function keyOf({ matters, rows }: RingAndBar): string {
  return sayRingAndBar({ open: rows.some(({ credit }) => credit === 'open'), band: matters > 0 });
}
