import { describe, expect, test } from 'vitest';
import {
  orderTrouble,
  plannedOrder,
  turnsInWords,
  type PlannedTurns,
} from '../../../src/intake/plan/plannedOrder.ts';
import { statedOrder } from '../../../src/findings/inputOf.ts';
import { lever } from '../../../src/stats/lever.ts';
import { orderClass } from '../../../src/stats/orderClass.ts';

const rotation: PlannedTurns = { kind: 'rotation' };
const blocks = (shotsAVisit: number): PlannedTurns => ({ kind: 'mini-blocks', shotsAVisit });
const ids = (count: number): readonly string[] =>
  ['alder', 'birch', 'cedar', 'dogwood', 'elm', 'fir'].slice(0, count);

const drawn = (contenders: readonly string[], shotsEach: number, turns: PlannedTurns, seed: string) => {
  const order = plannedOrder({ contenders, shotsEach, turns, seed });
  if (order === null) throw new Error('no order');
  return order;
};

const seeds = Array.from({ length: 40 }, (_, index) => `seed ${index}`);

describe('a rotation', () => {
  test.each([2, 3, 4, 5, 6])('of %i holds every contender once a round and is known as one', (count) => {
    for (const seed of seeds) {
      const order = drawn(ids(count), 12, rotation, seed);
      expect(order.map(({ shot }) => shot)).toEqual(
        Array.from({ length: 12 * count }, (_, index) => index + 1),
      );
      for (let round = 1; round <= 12; round += 1) {
        const own = order.filter((shot) => shot.round === round).map(({ contender }) => contender);
        expect([...own].sort()).toEqual([...ids(count)].sort());
      }
      const found = orderClass(order.map(({ contender }) => contender));
      expect(found.kind).toBe('rotation');
    }
  });

  test('gives each contender every place in a round about equally often', () => {
    const counts = new Map<string, number>();
    for (const seed of Array.from({ length: 300 }, (_, index) => `place ${index}`)) {
      drawn(ids(3), 12, rotation, seed).forEach(({ contender, shot }) => {
        const key = `${contender} ${(shot - 1) % 3}`;
        counts.set(key, (counts.get(key) ?? 0) + 1);
      });
    }
    // 300 orders of 12 rounds: 1200 of each on average, binomial sd 28; five sd either side.
    expect(counts.size).toBe(9);
    for (const count of counts.values()) expect(Math.abs(count - 1200)).toBeLessThan(142);
  });
});

describe('mini-blocks', () => {
  test.each([
    [2, 2, 6],
    [2, 3, 12],
    [3, 2, 12],
    [4, 3, 12],
    [6, 2, 8],
  ])(
    '%i contenders in visits of %i, %i shots each, are known as such and leave no long lever',
    (count, visit, shots) => {
      for (const seed of seeds) {
        const order = drawn(ids(count), shots, blocks(visit), seed);
        const sequence = order.map(({ contender }) => contender);
        const found = orderClass(sequence);
        expect(found.kind === 'mini-blocks' && found.fewestVisits >= 3).toBe(true);
        for (const a of ids(count)) {
          expect(sequence.filter((each) => each === a).length).toBe(shots);
          for (const b of ids(count)) if (a < b) expect(lever(sequence, a, b)).toBeLessThan(0.25);
        }
      }
    },
  );
});

test('the same seed gives the same order, another seed another', () => {
  const order = drawn(ids(3), 12, rotation, 'three-heads-2026-11-25');
  expect(drawn(ids(3), 12, rotation, 'three-heads-2026-11-25')).toEqual(order);
  expect(drawn(ids(3), 12, rotation, 'three-heads-2026-11-26')).not.toEqual(order);
  expect(new Set(seeds.map((seed) => JSON.stringify(drawn(ids(3), 12, rotation, seed)))).size).toBe(
    seeds.length,
  );
});

test('counts that leave no order are refused with the reason', () => {
  const refused = (shotsEach: number, turns: PlannedTurns) => [
    plannedOrder({ contenders: ids(2), shotsEach, turns, seed: 's' }),
    orderTrouble(shotsEach, turns),
  ];
  expect(refused(2, rotation)).toEqual([null, '3 shots with each or more, for a rotation']);
  expect(refused(13, blocks(2))).toEqual([null, 'a multiple of 2, to be hit in visits of 2']);
  expect(refused(6, blocks(3))).toEqual([null, '9 shots with each or more: mini-blocks need 3 visits']);
  expect([orderTrouble(12, rotation), orderTrouble(12, blocks(3))]).toEqual([null, null]);
});

test('the words for the plan are understood when the report is read', () => {
  expect(statedOrder(turnsInWords(rotation))).toBe('rotation');
  expect(statedOrder(turnsInWords(blocks(2)))).toBe('mini-blocks');
});
