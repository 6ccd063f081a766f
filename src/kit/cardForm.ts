import type { CardFrame } from './cardFrame.ts';
import type { CardPlan } from './cardPlan.ts';

/** A card of one size. */
export interface CardForm {
  readonly frame: CardFrame;
  /** The first for which there is room is taken. */
  readonly plans: readonly CardPlan[];
  /** Whether each pair stands over its bar or beside it, or the first is told in words alone. */
  readonly pairs: 'below' | 'beside' | 'told';
  /** Whether what was measured stands in the line of the publisher. */
  readonly head: 'apart' | 'beside-publisher';
}
