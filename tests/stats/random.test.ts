import { describe, expect, test } from 'vitest';
import { seededRandom, shuffled } from '../../src/stats/random.ts';
import { xoshiro128 } from '../../src/stats/xoshiro128.ts';

test('xoshiro128** 1.1 from state 1 2 3 4', () => {
  // ten outputs of the authors' reference implementation, as in the tests of the Rust crate rand_xoshiro
  const next = xoshiro128([1, 2, 3, 4]);
  expect(Array.from({ length: 10 }, next)).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

describe('seeded stream', () => {
  test('same seed, same numbers; another seed, others', () => {
    const numbers = (seed: string): readonly number[] =>
      Array.from({ length: 5 }, seededRandom(seed).uniform);
    expect(numbers('plan 1')).toEqual(numbers('plan 1'));
    expect(numbers('plan 1')).not.toEqual(numbers('plan 2'));
  });

  test('uniform: in range, mean, variance and neighbours within four standard errors', () => {
    const n = 200_000;
    const draws = Array.from({ length: n }, seededRandom('uniform').uniform);
    expect(draws.every((u) => u >= 0 && u < 1)).toBe(true);
    const mean = draws.reduce((sum, u) => sum + u, 0) / n;
    const variance = draws.reduce((sum, u) => sum + (u - 0.5) ** 2, 0) / n;
    const lagged =
      draws.slice(1).reduce((sum, u, i) => sum + (u - 0.5) * ((draws[i] ?? 0) - 0.5), 0) / (n - 1);
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / n));
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / n));
    expect(Math.abs(lagged)).toBeLessThan(4 / 12 / Math.sqrt(n));
  });

  test('normal: mean, variance and share beyond 1.96', () => {
    const n = 200_000;
    const draws = Array.from({ length: n }, seededRandom('normal').normal);
    const mean = draws.reduce((sum, z) => sum + z, 0) / n;
    const variance = draws.reduce((sum, z) => sum + z * z, 0) / n;
    const beyond = draws.filter((z) => Math.abs(z) > 1.959963984540054).length / n;
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(n));
    expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
    expect(Math.abs(beyond - 0.05)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / n));
  });

  test('shuffling gives each of the 6 orders of three about equally often and keeps its input', () => {
    const random = seededRandom('shuffle');
    const items = ['a', 'b', 'c'];
    const counts = new Map<string, number>();
    for (let i = 0; i < 6000; i++) {
      const order = shuffled(items, random).join('');
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(items).toEqual(['a', 'b', 'c']);
    expect(counts.size).toBe(6);
    for (const count of counts.values())
      expect(Math.abs(count - 1000)).toBeLessThan(4 * Math.sqrt(6000 * (5 / 36)));
  });
});
