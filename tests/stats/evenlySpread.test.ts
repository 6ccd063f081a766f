import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenlySpread } from '../../src/stats/evenlySpread.ts';
import { greatestOf, leastOf } from '../../src/stats/extremes.ts';

const counting = (count: number): readonly number[] => Array.from({ length: count }, (_, at) => at);

describe('evenly spread items of a long list', () => {
  test('no more than are asked for, in their order, none twice, from every stretch', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 60 }), (length, most) => {
        const found = evenlySpread(counting(length), most);
        expect(found).toHaveLength(Math.min(length, most));
        found.slice(1).forEach((item, at) => expect(item).toBeGreaterThan(found[at] ?? Infinity));
        if (length <= most) return;
        found.forEach((item, at) => {
          expect(item).toBeGreaterThanOrEqual(Math.floor((at * length) / most));
          expect(item).toBeLessThan(((at + 1) * length) / most);
        });
      }),
    );
  });

  test('contenders who take turns are met alike, whatever the number of shots is divided by', () => {
    for (const contenders of [2, 3, 4, 5, 6]) {
      const found = evenlySpread(counting(200_000 - (200_000 % contenders)), 2000);
      const counts = counting(contenders).map((own) => found.filter((at) => at % contenders === own).length);
      for (const count of counts) expect(count).toBeGreaterThan((0.9 * 2000) / contenders);
    }
  });
});

test('the ends of more values than a call can have arguments', () => {
  const many = counting(300_000).map((at) => (at * 7919) % 300_007);
  expect([leastOf(many), greatestOf(many)]).toEqual([0, 300_006]);
  expect([leastOf([]), greatestOf([])]).toEqual([Infinity, -Infinity]);
});
