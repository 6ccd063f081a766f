import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shapley } from '../../src/flight/shapley.ts';

function split(players: number, value: (has: (player: number) => boolean) => number): number[] {
  const values = Float64Array.from({ length: 1 << players }, (_, set) =>
    value((player) => (set & (1 << player)) !== 0),
  );
  const shares = new Float64Array(players);
  shapley(players)(values, shares);
  return [...shares];
}

describe('textbook games', () => {
  // One left glove, two right ones; a pair is worth 1: 2/3, 1/6, 1/6 (worked example found in any text on the value).
  test('gloves', () => {
    const shares = split(3, (has) => (has(0) && (has(1) || has(2)) ? 1 : 0));
    [2 / 3, 1 / 6, 1 / 6].forEach((share, i) => expect(shares[i]).toBeCloseTo(share, 14));
  });

  // Airport game (Littlechild & Owen 1973, Management Science 20): runways that cost 8, 11, 13, 18 are shared as
  // 8/4, then 3/3, 2/2 and 5 on top (figures of the worked example from memory).
  test('airport', () => {
    const costs = [8, 11, 13, 18];
    const shares = split(4, (has) => Math.max(0, ...costs.filter((_, player) => has(player))));
    [2, 3, 4, 9].forEach((share, i) => expect(shares[i]).toBeCloseTo(share, 13));
  });
});

test('shares add up, equals get equal, who adds nothing gets nothing', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 16, maxLength: 16 }),
      (table) => {
        // player 3 never changes the value; players 0 and 1 count alike
        const shares = split(4, (has) => table[(Number(has(0)) + Number(has(1))) * 2 + Number(has(2))] ?? 0);
        const total = (table[5] ?? 0) - (table[0] ?? 0);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(total, 9);
        expect(shares[0]).toBeCloseTo(shares[1] ?? Number.NaN, 9);
        expect(shares[3]).toBeCloseTo(0, 12);
      },
    ),
  );
});
