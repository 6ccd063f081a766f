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
  const points = 2 * count + 1;
  const groups = errors.length;
  // By grid point, group after group.
  const below = new Float64Array(points * groups);
  const density = new Float64Array(points * groups);
  for (let i = 0; i < points; i++) {
    errors.forEach((error, j) => {
      const z = ((i - count) * step) / error;
      below[i * groups + j] = normalUpper(-z);
      density[i * groups + j] = normalDensity(z) / error;
    });
  }

  let average = 0;
  for (let i = 0; i < points; i++) {
    let all = 1;
    let none = 1;
    for (let j = 0; j < groups; j++) {
      all *= below[i * groups + j] ?? 0;
      none *= below[(points - 1 - i) * groups + j] ?? 0;
    }
    average += 1 - all - none;
  }

  const between = new Float64Array(groups);
  const within = (range: number): number => {
    let sum = 0;
    for (let i = 0; i < points; i++) {
      const x = (i - count) * step;
      for (let j = 0; j < groups; j++) {
        between[j] = normalUpper(-(x + range) / (errors[j] ?? 1)) - (below[i * groups + j] ?? 0);
      }
      for (let j = 0; j < groups; j++) {
        let others = density[i * groups + j] ?? 0;
        for (let other = 0; other < groups; other++) if (other !== j) others *= between[other] ?? 0;
        sum += others;
      }
    }
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
