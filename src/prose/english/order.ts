import type { OrderKind } from '../../findings/findings.ts';

/** How the shots followed one another, as it ends a sentence: "They were hit in rounds, in a changing order". */
export const orderWords: Readonly<Record<OrderKind, string>> = {
  'one-after-another': 'one after another',
  'mini-blocks': 'in spells of a few shots',
  'rotation-same-order': 'in rounds, in the same order each time',
  'rotation-order-changed': 'in rounds, in a changing order',
  mixed: 'in mixed order',
  'planned-random': 'in random order, drawn beforehand',
  'stated-random': 'in random order (the shop states this; it cannot be checked)',
  'stated-rotation': 'in rounds (the shop states this; it cannot be checked)',
  'stated-mini-blocks': 'in spells of a few shots (the shop states this; it cannot be checked)',
  'stated-one-after-another': 'one after another (the shop states this; it cannot be checked)',
  unknown: 'in an order that is not known',
};
