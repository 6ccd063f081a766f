import { criticalRange } from './distributions/criticalRange.ts';
import { studentizedRangeUpper } from './distributions/studentizedRange.ts';
import { tQuantile, tTwoSided } from './distributions/t.ts';
import type { EstimatedGap, GapInterval } from './gapInterval.ts';

/**
 * Interval and p of a gap among all pairs of `family` groups: Student's t for two, else the studentized range
 * on the q scale divided by sqrt(2).
 */
export function familyInterval(
  { estimate, standardError, df }: EstimatedGap,
  level: number,
  family: number,
): GapInterval {
  const statistic = estimate / standardError;
  const critical =
    family === 2 ? tQuantile((1 + level) / 2, df) : criticalRange(level, family, df) / Math.SQRT2;
  const p =
    family === 2
      ? tTwoSided(statistic, df)
      : studentizedRangeUpper(Math.abs(statistic) * Math.SQRT2, family, df);
  const halfWidth = critical * standardError;
  return {
    estimate,
    standardError,
    df,
    statistic,
    p,
    ci: [estimate - halfWidth, estimate + halfWidth],
    level,
  };
}
