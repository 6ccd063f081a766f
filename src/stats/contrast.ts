import { at } from './at.ts';
import { compensatedSum } from './compensatedSum.ts';
import { familyInterval } from './familyInterval.ts';
import type { GapInterval } from './gapInterval.ts';
import type { Moments } from './moments.ts';
import { requireAtLeast, requireFraction, StatisticsError } from './statisticsError.ts';

/** One group's part in a contrast: the sum over terms of weight x mean is estimated. */
export interface ContrastTerm {
  readonly weight: number;
  readonly group: Moments;
}

/**
 * A weighted sum of independent group means, spreads not assumed equal: variance sum w^2 s^2 / n, Satterthwaite's
 * df (Satterthwaite 1946, Biometrics 2). Two hitters' gaps compared: weights 1, -1, -1, 1. Several hitters
 * counted alike: weights 1/H and -1/H over all their groups.
 *
 * @param family how many groups are compared in all pairs; 2 (Student's t) or more (studentized range q /
 * sqrt(2), so that the intervals of all pairs hold together)
 * @throws StatisticsError `sample-too-small`, or `no-spread` when no group with weight varies
 */
export function contrast(terms: readonly ContrastTerm[], level: number, family = 2): GapInterval {
  requireFraction('contrast', 'level', level);
  requireAtLeast('contrast', 'groups', terms.length, 1);
  for (const { group } of terms) requireAtLeast('contrast', 'values a group', group.n, 2);
  const parts = terms.map(({ weight, group }) => (weight * weight * group.variance) / group.n);
  const squared = compensatedSum(parts);
  if (!(squared > 0)) throw new StatisticsError('no-spread', 'contrast', 'no group varies');
  const df = 1 / compensatedSum(terms.map(({ group }, i) => (at(parts, i) / squared) ** 2 / (group.n - 1)));
  const estimate = compensatedSum(terms.map(({ weight, group }) => weight * group.mean));
  const standardError = Math.sqrt(squared);
  return familyInterval({ estimate, standardError, df }, level, family);
}
