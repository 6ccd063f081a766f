import { expect, test } from 'vitest';
import { orderInWords } from '../../../src/prose/english/order.ts';

test.each([
  ['rotation-same-order', 'in rounds, one of each, in the same order every time'],
  ['rotation-orders-differ', 'in rounds, one of each, in an order that was not the same for all golfers'],
  ['rotation-order-changed', 'in rounds, one of each, the order changing from round to round'],
] as const)('shots in rounds, %s', (order, words) => {
  expect(orderInWords(order)).toBe(words);
});
