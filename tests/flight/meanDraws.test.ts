import { describe, expect, test } from 'vitest';
import { meanDraws, meansOf } from '../../src/flight/meanDraws.ts';
import { moments } from '../../src/stats/moments.ts';
import { quantile } from '../../src/stats/quantile.ts';
import { seededRandom } from '../../src/stats/random.ts';
import { tQuantile } from '../../src/stats/distributions/t.ts';

const a = [10, 12, 11, 15, 12, 14, 13, 9].map((x, i) => [x, i]);
const b = [8, 9, 7, 13, 10, 11, 11, 8].map((x, i) => [x, i * 2]);
const rounds = { a: [0, 1, 2, 3, 4, 5, 6, 7], b: [0, 1, 2, 3, 4, 5, 6, 7] };

function gapsDrawn(byRounds: boolean): readonly number[] {
  const draw = meanDraws({ a, b, rounds: byRounds ? rounds : undefined }, seededRandom('gaps'));
  return Array.from({ length: 20000 }, () => {
    const pair = draw();
    return (pair.a[0] ?? 0) - (pair.b[0] ?? 0);
  });
}

describe('draws of two mean vectors', () => {
  test('by rounds: the t interval of the paired differences', () => {
    const { mean, variance, n } = moments(a.map((row, i) => (row[0] ?? 0) - (b[i]?.[0] ?? 0)));
    const half = tQuantile(0.975, n - 1) * Math.sqrt(variance / n);
    const gaps = gapsDrawn(true);
    expect(quantile(gaps, 0.975)).toBeCloseTo(mean + half, 1);
    expect(quantile(gaps, 0.025)).toBeCloseTo(mean - half, 1);
  });

  test('by shots: spread of both contenders, wider than by rounds where rounds move both', () => {
    const gaps = gapsDrawn(false);
    const own = [a, b].map((rows) => moments(rows.map((row) => row[0] ?? 0)));
    // a scaled t with 7 df has variance 7/5 of its scale's square
    const expected = own.reduce((sum, { variance, n }) => sum + ((7 / 5) * variance) / n, 0);
    expect(moments(gaps).variance / expected).toBeCloseTo(1, 1);
    expect(moments(gaps).variance).toBeGreaterThan(moments(gapsDrawn(true)).variance * 2);
  });

  test('means by rounds take the rounds that hold both, each round alike', () => {
    const means = meansOf({
      a: [[10], [14], [20], [99]],
      b: [[9], [15], [17]],
      rounds: { a: [1, 1, 2, 3], b: [1, 2, 2] },
    });
    expect((means.a[0] ?? 0) - (means.b[0] ?? 0)).toBeCloseTo((12 - 9 + (20 - 16)) / 2, 12);
    expect((means.a[0] ?? 0) + (means.b[0] ?? 0)).toBeCloseTo((12 + 9 + 20 + 16) / 2, 12);
  });
});
