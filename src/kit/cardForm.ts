import type { CardFrame } from './cardFrame.ts';
import type { CardPlan } from './cardPlan.ts';

/** A card of one size. */
export interface CardForm {
  readonly frame: CardFrame;
  /** The first for which there is room is taken. */
  readonly plans: readonly CardPlan[];
  /** Whether each pair stands over its bar or beside it, or the first is told in words alone. */
  readonly pairs: 'below' | 'beside' | 'told';
  /**
   * Where what was measured stands: in a line of its own below stamp and publisher, in theirs, or beside the stamp with
   * the publisher at the foot.
   */
  readonly head: 'apart' | 'beside-publisher' | 'beside-stamp';
  /** How much paper stands between its parts; 1 is usual. */
  readonly air: number;
}
