import { compensatedSumOf } from './compensatedSum.ts';
import { greatestOf } from './extremes.ts';
import { familyInterval } from './familyInterval.ts';
import { pairsOf, type GapInterval, type PairGap } from './gapInterval.ts';
import { requireAtLeast, requireFinite, requireFraction, StatisticsError } from './statisticsError.ts';

/** One observation: its group (counted from 0), the covariate and the value. */
interface Observation {
  readonly group: number;
  readonly covariate: number;
  readonly value: number;
}

/** Fit of value = group + slope x covariate + rest. */
export interface CommonSlope {
  /** value per unit of the covariate, Student's t interval */
  readonly slope: GapInterval;
  readonly residualDf: number;
  readonly residualVariance: number;
  /** all pairs of groups at equal covariate, q(level; k, residualDf) / sqrt(2) */
  readonly gaps: readonly PairGap[];
}

/**
 * Analysis of covariance with one slope for all groups (Fisher 1932; Snedecor & Cochran, chapter 18), by least
 * squares within groups. With the place in the session as covariate it is a straight drift with group effects.
 * Assumes equal spread and the same slope in every group.
 *
 * @throws StatisticsError `sample-too-small` without a value, for an empty group or no residual df; `no-spread`
 * when the covariate varies within no group or the fit is exact
 */
export function commonSlope(observations: readonly Observation[], level: number): CommonSlope {
  requireFraction('commonSlope', 'level', level);
  requireFinite(
    'commonSlope',
    observations.flatMap(({ covariate, value }) => [covariate, value]),
  );
  const count = 1 + Math.max(0, greatestOf(observations.map(({ group }) => group)));
  requireAtLeast('commonSlope', 'groups', observations.length === 0 ? 0 : count, 1);
  const groups = Array.from({ length: count }, (_, group) => {
    const own = observations.filter((one) => one.group === group);
    requireAtLeast('commonSlope', 'values a group', own.length, 1);
    const x = compensatedSumOf(own, ({ covariate }) => covariate) / own.length;
    const y = compensatedSumOf(own, ({ value }) => value) / own.length;
    const centred = own.map(({ covariate, value }) => ({ x: covariate - x, y: value - y }));
    return { n: own.length, x, y, centred };
  });
  const residualDf = observations.length - count - 1;
  requireAtLeast('commonSlope', 'residual degrees of freedom', residualDf, 1);
  const centred = groups.flatMap((group) => group.centred);
  const sxx = compensatedSumOf(centred, ({ x }) => x * x);
  if (!(sxx > 0))
    throw new StatisticsError('no-spread', 'commonSlope', 'the covariate varies within no group');
  const slope = compensatedSumOf(centred, ({ x, y }) => x * y) / sxx;
  const rss = compensatedSumOf(centred, ({ x, y }) => (y - slope * x) ** 2);
  const total = compensatedSumOf(centred, ({ y }) => y * y);
  if (!(rss > 1e-24 * total)) throw new StatisticsError('no-spread', 'commonSlope', 'the fit is exact');
  const residualVariance = rss / residualDf;
  const gaps = pairsOf(count).flatMap(([a, b]) => {
    const first = groups[a];
    const second = groups[b];
    if (first === undefined || second === undefined) return [];
    const apart = first.x - second.x;
    const standardError = Math.sqrt(residualVariance * (1 / first.n + 1 / second.n + (apart * apart) / sxx));
    const estimate = first.y - second.y - slope * apart;
    return [{ a, b, ...familyInterval({ estimate, standardError, df: residualDf }, level, count) }];
  });
  const error = Math.sqrt(residualVariance / sxx);
  return {
    slope: familyInterval({ estimate: slope, standardError: error, df: residualDf }, level, 2),
    residualDf,
    residualVariance,
    gaps,
  };
}
