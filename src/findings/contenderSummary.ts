import { centre, describe } from '../stats/describe.ts';
import type { ContenderSummary } from './findings.ts';
import { sdIntervalOf } from './spread.ts';
import type { Sample } from './samples.ts';

/** Figures of one contender: what one shot bears, what two bear, or nothing. The interval is the mean's own 95 %. */
export function contenderSummary({ contender, values }: Sample): ContenderSummary {
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
  return { id: contender, n, mean, sd, ci, median, min, max, sdCi: sdIntervalOf(values) };
}
