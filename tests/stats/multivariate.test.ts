import { describe, expect, test } from 'vitest';
import { covariance } from '../../src/stats/covariance.ts';
import { chiSquareDraw } from '../../src/stats/chiSquareDraw.ts';
import { meanVectorDraws } from '../../src/stats/multivariateT.ts';
import { predictionEllipse } from '../../src/stats/predictionEllipse.ts';
import { seededRandom } from '../../src/stats/random.ts';
import reference from '../reference/statistics.json' with { type: 'json' };
import { at, expectClose } from './close.ts';

describe('prediction ellipse', () => {
  test('against eigen and qf of R', () => {
    for (const row of reference.ellipses) {
      const points = row.x.map((x, i) => [x, at(row.y, i)] as const);
      const own = predictionEllipse(points, row.level);
      expectClose(own.factor, row.factor, 1e-10);
      expectClose(own.correlation, row.correlation, 1e-10);
      [0, 1].forEach((i) => {
        expectClose(at(own.halfAxes, i), at(row.halfAxes, i), 1e-10);
        expectClose(at(own.centre, i), at(row.centre, i), 1e-13);
      });
      // an axis has no direction of its own: angles agree up to half a turn
      expectClose(Math.cos(2 * (own.angle - row.angle)), 1, 1e-12);
    }
  });

  test('holds the next point as often as it says', () => {
    const random = seededRandom('ellipse');
    const point = (): readonly [number, number] => {
      const x = random.normal();
      return [x, 0.6 * x + random.normal()];
    };
    const trials = 4000;
    let held = 0;
    for (let i = 0; i < trials; i++) {
      const own = predictionEllipse(Array.from({ length: 10 }, point), 0.9);
      const [x, y] = point();
      const [dx, dy] = [x - own.centre[0], y - own.centre[1]];
      const along = (dx * Math.cos(own.angle) + dy * Math.sin(own.angle)) / own.halfAxes[0];
      const across = (dy * Math.cos(own.angle) - dx * Math.sin(own.angle)) / own.halfAxes[1];
      if (along * along + across * across <= 1) held += 1;
    }
    // four standard errors of a share of 0.9 in 4,000
    expect(Math.abs(held / trials - 0.9)).toBeLessThan(4 * Math.sqrt(0.09 / trials));
  });

  test('points on a line are refused', () => {
    const line = [1, 2, 3, 4].map((x) => [x, 2 * x] as const);
    expect(() => predictionEllipse(line, 0.9)).toThrow('the points lie on a line');
  });
});

describe('draws', () => {
  test('chi-square draws have mean df and variance 2 df', () => {
    for (const df of [1, 3, 11]) {
      const random = seededRandom(`chi-square ${df}`);
      const draws = Array.from({ length: 40_000 }, () => chiSquareDraw(df, random));
      const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
      const variance = draws.reduce((sum, value) => sum + (value - mean) ** 2, 0) / draws.length;
      expect(Math.abs(mean / df - 1)).toBeLessThan(4 * Math.sqrt(2 / df / draws.length));
      expect(Math.abs(variance / (2 * df) - 1)).toBeLessThan(0.08);
    }
  });

  test('mean vectors: centre, covariance (n - 1) / (n - 3) S / n, flat columns stay', () => {
    const rows = Array.from({ length: 12 }, (_, i) => [i % 5, (i * 3) % 7, 4]);
    const sample = covariance(rows);
    const draw = meanVectorDraws(sample, seededRandom('means'));
    const draws = Array.from({ length: 40_000 }, draw);
    const drawn = covariance(draws);
    expect(draws.every((vector) => vector[2] === 4)).toBe(true);
    for (const [i, j] of [
      [0, 0],
      [0, 1],
      [1, 1],
    ] as const) {
      const expected = (at(at(sample.matrix, i), j) / 12) * (11 / 9);
      const scale = Math.sqrt(at(at(sample.matrix, i), i) * at(at(sample.matrix, j), j)) / 12;
      expectClose(at(at(drawn.matrix, i), j), expected, 0.04, scale);
    }
    expectClose(at(drawn.means, 0), at(sample.means, 0), 0.01, 1);
  });
});
