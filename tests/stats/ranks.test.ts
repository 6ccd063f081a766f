import { describe, expect, test } from 'vitest';
import { mannWhitney } from '../../src/stats/mannWhitney.ts';
import { midranks } from '../../src/stats/midranks.ts';
import { permutationWithinRounds } from '../../src/stats/permutationWithinRounds.ts';
import { seededRandom } from '../../src/stats/random.ts';
import reference from '../reference/statistics.json' with { type: 'json' };
import { at, expectClose } from './close.ts';

test('midranks', () => {
  expect(midranks([30, 10, 20, 20])).toEqual({ ranks: [4, 1, 2.5, 2.5], ties: [2] });
});

describe('Mann-Whitney', () => {
  test('exact without ties, as wilcox.test of R: 1e-12', () => {
    for (const { x, y, u, p } of reference.mannWhitney) {
      const own = mannWhitney(x, y);
      expect(own.method).toBe('exact');
      expect(own.u).toBe(u);
      expectClose(own.p, p, 1e-12);
    }
  });

  test('exact with ties, against every way to deal the midranks (combn of R): 1e-12', () => {
    for (const { x, y, u, p } of reference.mannWhitneyTies) {
      const own = mannWhitney(x, y);
      expect(own.u).toBe(u);
      expectClose(own.p, p, 1e-12);
    }
  });

  test('beyond 200 values the normal approximation of R', () => {
    const { x, y, u, p } = reference.mannWhitneyNormal;
    const own = mannWhitney(x, y);
    expect(own.method).toBe('normal');
    expect(own.u).toBe(u);
    expectClose(own.p, p, 1e-9);
  });

  test('five against five wholly apart: 2 / C(10, 5)', () => {
    expectClose(mannWhitney([1, 2, 3, 4, 5], [6, 7, 8, 9, 10]).p, 2 / 252, 1e-14);
  });
});

describe('reshuffling within rounds', () => {
  const random = seededRandom('permutation');

  test('two treatments in five rounds cannot reach 0.05: 2 of 32 sign patterns are as extreme', () => {
    const rounds = [1, 2, 3, 4, 5].map((gap) => [230, 230 + gap]);
    const result = permutationWithinRounds(rounds, random);
    expect(result.method).toBe('exact');
    expectClose(result.p, 2 / 32, 1e-14);
  });

  test('two treatments: the sign-flip test, counted by hand', () => {
    // differences 3 1 2 -1: |sum| 5; of 16 patterns those with |sum| >= 5 are 7 5 5 and their mirror images
    const result = permutationWithinRounds(
      [
        [3, 0],
        [1, 0],
        [2, 0],
        [0, 1],
      ],
      random,
    );
    expectClose(result.p, 6 / 16, 1e-14);
  });

  test('drawn and exact agree', () => {
    const golf = at(reference.twoway, 0);
    const rows = Array.from({ length: 4 }, (_, block) =>
      [0, 1, 2].map((treatment) => at(golf.value, treatment * 10 + block)),
    );
    const exact = permutationWithinRounds(rows, random);
    expect(exact).toMatchObject({ method: 'exact', arrangements: 216 });
    const many = [...rows, ...rows, ...rows].map((row, i) =>
      row.map((value, j) => value + ((i * 7 + j) % 5) * 4),
    );
    const drawn = permutationWithinRounds(many, random, 4000);
    const again = permutationWithinRounds(many, seededRandom('other'), 4000);
    expect(drawn.method).toBe('drawn');
    expect(Math.abs(drawn.p - again.p)).toBeLessThan(0.05);
    expect(drawn.p).toBe(Math.min(...drawn.pairs.map(({ p }) => p)));
  });

  test('the same seed gives the same p', () => {
    const rows = Array.from({ length: 9 }, (_, i) => [i % 3, (i * 5) % 4, (i * 7) % 6]);
    const first = permutationWithinRounds(rows, seededRandom('a'), 500);
    expect(permutationWithinRounds(rows, seededRandom('a'), 500)).toEqual(first);
  });
});
