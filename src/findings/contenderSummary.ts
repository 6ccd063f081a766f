import { centre, describe } from '../stats/describe.ts';
import type { ContenderSummary } from './findings.ts';
import { sdIntervalOf } from './spread.ts';
import type { Sample } from './samples.ts';

/**
 * Figures of one contender: what one shot bears, what two bear, or nothing. The interval is the mean's own 95 %, for one
 * hitter only: the shots of several are not independent of who hit them.
 */
export function contenderSummary({ contender, values }: Sample, oneHitter: boolean): ContenderSummary {
  if (values.length === 0) {
    return {
      id: contender,
      n: 0,
      mean: null,
      sd: null,
      ci: null,
      median: null,
      min: null,
      max: null,
      sdCi: null,
    };
  }
  if (values.length === 1) {
    const { n, mean, median, min, max } = centre(values);
    return { id: contender, n, mean, sd: null, ci: null, median, min, max, sdCi: null };
  }
  const { n, mean, sd, ci, median, min, max } = describe(values);
  return {
    id: contender,
    n,
    mean,
    sd,
    ci: oneHitter ? ci : null,
    median,
    min,
    max,
    sdCi: oneHitter ? sdIntervalOf(values) : null,
  };
}
