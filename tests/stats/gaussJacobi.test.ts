import { expect, test } from 'vitest';
import { gaussJacobi } from '../../src/stats/gaussJacobi.ts';

test('two nodes of Gauss and Legendre, as any table has them: 1/2 -+ 1/(2 sqrt 3), half each', () => {
  const nodes = gaussJacobi(0, 0, 2);
  expect(nodes.map(({ at }) => at)).toEqual([
    expect.closeTo(0.5 - 0.5 / Math.sqrt(3), 14),
    expect.closeTo(0.5 + 0.5 / Math.sqrt(3), 14),
  ]);
  nodes.forEach(({ weight }) => expect(weight).toBeCloseTo(0.5, 14));
});

// Moments of beta(p, q): E y^m = p (p + 1) ... (p + m - 1) / ((p + q) ... (p + q + m - 1)).
test.each([
  [0, -0.5],
  [4.5, -0.5],
  [47, -0.5],
  [1.3, 2.1],
])('four nodes have the moments of the beta up to the seventh: a %f, b %f', (a, b) => {
  const nodes = gaussJacobi(a, b, 4);
  let moment = 1;
  for (let m = 0; m <= 7; m++) {
    const found = nodes.reduce((sum, { at, weight }) => sum + weight * at ** m, 0);
    expect(found / moment).toBeCloseTo(1, 12);
    moment *= (b + 1 + m) / (a + b + 2 + m);
  }
  const eighth = nodes.reduce((sum, { at, weight }) => sum + weight * at ** 8, 0);
  expect(Math.abs(eighth / moment - 1)).toBeGreaterThan(1e-9);
});
