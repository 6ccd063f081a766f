import { normalDensity, normalUpper } from './distributions/normal.ts';
import { criticalRange } from './distributions/criticalRange.ts';
import { findRoot } from './findRoot.ts';
import { requireAtLeast, requirePositive } from './statisticsError.ts';

/** How far apart the best and the worst of equal groups come by luck, in the values' unit. */
export interface Luck {
  readonly average: number;
  /** passed by 5 of 100 sessions */
  readonly upTo: number;
}

/** Grid in units of the smallest standard error; the integrands are smooth at this scale. */
const STEP = 0.5;
const REACH = 8.5;
/** A group this much surer than the surest is treated as that sure, which bounds the grid. */
const WIDEST_RATIO = 200;

/**
 * Luck yardstick for k groups of equal true mean: the mean and the 95 % point of largest minus smallest sample
 * mean, each mean normal with its own standard error sd / sqrt(n). Mean: Int 1 - prod F_j - prod (1 - F_j) dx
 * (Tippett 1925, Biometrika 17; d2 of the control charts times the standard error when all are equal). 95 %
 * point: P(range <= r) = sum_j Int f_j(x) prod_(i != j) [F_i(x + r) - F_i(x)] dx.
 *
 * @throws StatisticsError `sample-too-small` under two groups, `bad-argument` unless every standard error > 0
 */
export function luck(standardErrors: readonly number[]): Luck {
  requireAtLeast('luck', 'groups', standardErrors.length, 2);
  for (const error of standardErrors) requirePositive('luck', 'standard error', error);
  const widest = Math.max(...standardErrors);
  const errors = standardErrors.map((error) => Math.max(error, widest / WIDEST_RATIO));
  const step = STEP * Math.min(...errors);
  const count = Math.ceil((REACH * widest) / step);
  const grid = Array.from({ length: 2 * count + 1 }, (_, i) => (i - count) * step);
  const below = grid.map((x) => errors.map((error) => normalUpper(-x / error)));

  let average = 0;
  grid.forEach((_, i) => {
    const mirrored = below[grid.length - 1 - i] ?? [];
    const all = (below[i] ?? []).reduce((product, share) => product * share, 1);
    const none = mirrored.reduce((product, share) => product * share, 1);
    average += 1 - all - none;
  });

  const within = (range: number): number => {
    let sum = 0;
    grid.forEach((x, i) => {
      const between = errors.map((error, j) => normalUpper(-(x + range) / error) - (below[i]?.[j] ?? 0));
      errors.forEach((error, j) => {
        const others = between.reduce(
          (product, share, other) => (other === j ? product : product * share),
          1,
        );
        sum += (normalDensity(x / error) / error) * others;
      });
    });
    return sum * step;
  };
  const equal = criticalRange(0.95, errors.length, Infinity);
  const smallest = Math.min(...errors);
  const upTo =
    smallest === widest
      ? equal * widest
      : findRoot((range) => within(range) - 0.95, 0.9 * equal * smallest, 1.1 * equal * widest, 1e-12);
  return { average: average * step, upTo };
}
