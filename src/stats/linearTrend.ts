import { commonSlope, type CommonSlope } from './commonSlope.ts';

/**
 * A straight drift over the session with group effects: value ~ group + place. `slope` is in the values' unit
 * per place; `gaps` are the groups' with the drift taken out. Errors as `commonSlope`.
 *
 * @param sequence group of each shot (counted from 0), in the order they were measured
 * @param values the shots' values; null where there is no reading (the place still counts)
 */
export function linearTrend(
  sequence: readonly number[],
  values: readonly (number | null)[],
  level: number,
): CommonSlope {
  const observations = sequence.flatMap((group, i) => {
    const value = values[i] ?? null;
    return value === null ? [] : [{ group, covariate: i + 1, value }];
  });
  return commonSlope(observations, level);
}
