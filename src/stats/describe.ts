import { tQuantile } from './distributions/t.ts';
import { meanOf, moments } from './moments.ts';
import { quantileOfSorted, sorted } from './quantile.ts';
import { requireAtLeast, requireFinite, requireFraction } from './statisticsError.ts';

/** What even a single value has. All in the values' unit. */
interface Centre {
  readonly n: number;
  readonly mean: number;
  readonly median: number;
  readonly min: number;
  readonly max: number;
}

/** A group described; needs two values, since one has no spread. All in the values' unit (variance squared). */
interface Description extends Centre {
  readonly sd: number;
  readonly variance: number;
  /** Student's t interval of the mean; assumes independent values and a mean near normal. */
  readonly ci: readonly [number, number];
}

/** Centre and extremes of one value or more. @throws StatisticsError `sample-too-small` when empty */
export function centre(values: readonly number[]): Centre {
  requireAtLeast('centre', 'values', values.length, 1);
  requireFinite('centre', values);
  return centreOf(values, sorted(values));
}

function centreOf(values: readonly number[], ascending: readonly number[]): Centre {
  return {
    n: values.length,
    mean: meanOf(values),
    median: quantileOfSorted(ascending, 0.5),
    min: quantileOfSorted(ascending, 0),
    max: quantileOfSorted(ascending, 1),
  };
}

/**
 * Full description of two values or more, `level` being the coverage of the interval of the mean.
 * @throws StatisticsError `sample-too-small` under two values
 */
export function describe(values: readonly number[], level = 0.95): Description {
  requireFraction('describe', 'level', level);
  requireAtLeast('describe', 'values', values.length, 2);
  const { n, mean, variance } = moments(values);
  const halfWidth = tQuantile((1 + level) / 2, n - 1) * Math.sqrt(variance / n);
  const ascending = sorted(values);
  return {
    ...centreOf(values, ascending),
    sd: Math.sqrt(variance),
    variance,
    ci: [mean - halfWidth, mean + halfWidth],
  };
}
