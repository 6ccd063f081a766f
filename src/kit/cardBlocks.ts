import type { RingAndBar } from '../charts/ringAndBar.ts';
import type { Weight } from '../charts/textWidth.ts';
import { sayRingAndBar } from '../prose/english/kit/cardWords.ts';
import { sentence } from '../prose/words.ts';
import { stampBlock, textBlock, type CardBlock, type CardLines } from './cardBlock.ts';
import type { CardForm } from './cardForm.ts';
import { roomOf } from './cardFrame.ts';
import { pairsBelow, pairsBeside } from './cardPairs.ts';
import type { CardPlan } from './cardPlan.ts';
import { findingWithin, type CardWords } from './cardWords.ts';

/** What a card holds from the top down, and of it the finding, which has a number of lines at most. */
interface CardBlocks {
  readonly all: readonly CardBlock[];
  readonly finding: readonly CardLines[];
}

/** What a card has to say and to show. */
interface CardContent {
  readonly words: CardWords;
  /** In the words for which the plan has room. */
  readonly interest: string;
  /** Ring and bar of its first pairs; null where none was judged. */
  readonly sign: RingAndBar | null;
}

/** What a card holds under a plan. */
export function cardBlocks(
  { words, interest, sign }: CardContent,
  plan: CardPlan,
  form: Omit<CardForm, 'plans'>,
): CardBlocks {
  const { text } = plan;
  const room = roomOf(form.frame);
  /** Paper over a part, in letter sizes. */
  const air = (share: number): number => Math.round(text * share * form.air);
  const finding = textBlock(findingWithin(words, plan.words), room, {
    ...{ size: plan.finding, weight: 600, serif: true },
    above: air(0.3),
  });
  const told = form.pairs === 'told';
  const caution = joined(told ? (words.pairs[0] ?? '') : '', cautionIn(words, plan));
  const all = [
    ...opening(words, text, room, form),
    ...finding,
    ...textBlock(caution, room, { size: text, above: air(0.35) }),
    ...(sign === null || told ? [] : pictureOf(sign, words, plan, form)),
    ...textBlock(interest, room, { size: text, above: air(0.55), marked: true, gives: true }),
    ...footOf(words, plan, form).flatMap((line, index) =>
      textBlock(line, room, { size: plan.foot, above: air(index === 0 ? 0.45 : 0.1), colour: 'ink-2' }),
    ),
  ];
  return { all, finding };
}

/** Stamp, publisher, whether the report is as it was, and what was measured. */
function opening(
  { stamp, publisher, changes, head }: CardWords,
  size: number,
  room: number,
  form: Pick<CardForm, 'head' | 'air'>,
): readonly CardBlock[] {
  const above = Math.round(size * 0.4 * form.air);
  const line = (told: string, weight: Weight): readonly CardBlock[] =>
    textBlock(told, room, { size, weight, above, colour: 'ink-2' });
  switch (form.head) {
    case 'apart':
      return [...stampBlock(stamp, joined(publisher, changes), room, { size, above: 0 }), ...line(head, 400)];
    case 'beside-publisher':
      return stampBlock(stamp, joined(publisher, changes, head && sentence(head)), room, { size, above: 0 });
    case 'beside-stamp':
      return [...stampBlock(stamp, head, room, { size, above: 0 }), ...line(changes, 600)];
  }
}

/** Ring and bar of as many pairs as the plan has, and what they are. */
function pictureOf(
  { rows, ...sign }: RingAndBar,
  { pairs: words }: CardWords,
  { pairs, picture, text }: CardPlan,
  form: Pick<CardForm, 'frame' | 'pairs'>,
): readonly CardBlock[] {
  if (pairs === 0 || picture === 0) return [];
  const room = roomOf(form.frame);
  const shown = { ...sign, rows: rows.slice(0, pairs) };
  const place = form.pairs === 'beside' ? pairsBeside : pairsBelow;
  const key = sayRingAndBar({
    open: shown.rows.some(({ credit }) => credit === 'open'),
    band: shown.matters > 0,
  });
  return [
    ...place(shown, words, { room, text, picture }),
    ...textBlock(key, room, { size: text, above: 2, colour: 'ink-2' }),
  ];
}

/** Who hit and when, and where the report stands: in one line where paper is dear. */
function footOf(
  { publisher, whom, where }: CardWords,
  plan: CardPlan,
  { head, pairs }: Pick<CardForm, 'head' | 'pairs'>,
): readonly string[] {
  const who = joined(head === 'beside-stamp' ? publisher : '', whom[plan.whom]);
  return pairs === 'told' ? [joined(who, where)] : [who, where];
}

const joined = (...told: readonly string[]): string => told.filter((words) => words !== '').join(' ');

function cautionIn({ caution }: CardWords, plan: CardPlan): string {
  if (caution === null) return '';
  if (plan.caution === 'whole') return caution.whole;
  return plan.caution === 'brief' || caution.decides ? caution.brief : '';
}
