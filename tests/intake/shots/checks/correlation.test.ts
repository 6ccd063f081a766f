import { expect, it } from 'vitest';
import { correlation } from '../../../../src/intake/shots/checks/correlation.ts';

it('gives the published correlations of the quartet', () => {
  // Anscombe 1973, "Graphs in statistical analysis", The American Statistician 27: r = 0.816 for all four sets; to more
  // digits, R 4.2: with(anscombe, c(cor(x1, y1), cor(x4, y4))) gives 0.8164205 and 0.8165214.
  const x1 = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
  const y1 = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
  const x4 = [8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8];
  const y4 = [6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.5, 5.56, 7.91, 6.89];
  expect(correlation(x1, y1)).toBeCloseTo(0.8164205, 7);
  expect(correlation(x4, y4)).toBeCloseTo(0.8165214, 7);
});

it('is nothing where a series does not vary', () => {
  expect(correlation([1, 2, 3], [5, 5, 5])).toBeNull();
});
