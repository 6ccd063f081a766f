import type { OrderKind } from '../../findings/findings.ts';
import { counted, countRange } from '../words.ts';

const unverified = 'stated, not verified';

/** How the shots followed one another, as it ends a sentence that counts them. */
const orderWords: Readonly<Record<OrderKind, string>> = {
  'one-after-another': 'one after another',
  'mini-blocks': 'in spells of a few shots, going back and forth',
  'rotation-same-order': 'in rounds, one of each, in the same order every time',
  'rotation-order-changed': 'in rounds, one of each, the order changing from round to round',
  'rotation-orders-differ': 'in rounds, one of each, in an order that was not the same for all golfers',
  counterbalanced: 'in orders that even out from golfer to golfer',
  mixed: 'in mixed order',
  'planned-random': 'in random order, drawn beforehand',
  'stated-random': `in random order (${unverified})`,
  'stated-rotation': `in rounds, one of each (${unverified})`,
  'stated-mini-blocks': `in spells of a few shots (${unverified})`,
  'stated-one-after-another': `one after another (${unverified})`,
  unknown: 'in an order that is not known',
};

/** The order of the shots in words. */
export function orderInWords(order: OrderKind): string {
  return orderWords[order];
}

/** "12 shots with each head", or the range of counts where they differ. */
export function shotsEach(counts: readonly number[], noun: string): string {
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  const each = `with each ${noun}`;
  return least === most ? `${counted(least, 'shot')} ${each}` : `${countRange(least, most)} shots ${each}`;
}
