import { tQuantile } from './distributions/t.ts';
import { familyInterval } from './familyInterval.ts';
import type { GapInterval } from './gapInterval.ts';
import { moments } from './moments.ts';
import { requireFraction, StatisticsError } from './statisticsError.ts';

/**
 * One-sample t: the mean of independent values with its interval, tested against 0 (Student 1908). On the
 * differences of pairs it is the paired t; on the gaps of several reports it is pooling that counts each report
 * alike (its error rate holds whatever the reports' sizes, unlike that of weighted pooling).
 *
 * @throws StatisticsError `sample-too-small` under two values, `no-spread` when all are equal
 */
export function meanInterval(values: readonly number[], level: number): GapInterval {
  requireFraction('meanInterval', 'level', level);
  const { n, mean, variance } = moments(values);
  if (!(variance > 0)) throw new StatisticsError('no-spread', 'meanInterval', 'all values are equal');
  return familyInterval({ estimate: mean, standardError: Math.sqrt(variance / n), df: n - 1 }, level, 2);
}

/** Prediction interval of one further value: mean -+ t sd sqrt(1 + 1/n). Errors as `meanInterval`. */
export function nextValueInterval(values: readonly number[], level: number): readonly [number, number] {
  const { estimate, standardError, df } = meanInterval(values, level);
  const halfWidth = tQuantile((1 + level) / 2, df) * standardError * Math.sqrt(df + 2);
  return [estimate - halfWidth, estimate + halfWidth];
}
