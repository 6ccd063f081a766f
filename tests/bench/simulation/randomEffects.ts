import gammainc from '@stdlib/math-base-special-gammainc';
import { compensatedSum } from '../../../src/stats/compensatedSum.ts';
import { normalQuantile, normalUpper } from '../../../src/stats/distributions/normal.ts';
import { tQuantile } from '../../../src/stats/distributions/t.ts';
import { familyInterval } from '../../../src/stats/familyInterval.ts';
import type { GapInterval } from '../../../src/stats/gapInterval.ts';
import { requireAtLeast, requireFraction, requirePositive } from '../../../src/stats/statisticsError.ts';

/** One study: its estimate and the standard error of that estimate, same unit. */
export interface Study {
  readonly estimate: number;
  readonly standardError: number;
}

/** Pooled estimate of several studies whose true values differ. */
export interface RandomEffects {
  /** variance between studies, unit squared */
  readonly between: number;
  /** Cochran's Q with its df and p */
  readonly heterogeneity: { readonly q: number; readonly df: number; readonly p: number };
  /** inverse-variance weights, normal interval; df is infinite */
  readonly wald: GapInterval;
  /** the same estimate with Hartung & Knapp's standard error and t(k - 1) */
  readonly hartungKnapp: GapInterval;
  /** where the true value of a new study lies: t(k - 2); null for two studies */
  readonly prediction: readonly [number, number] | null;
}

/**
 * Random-effects pooling: between-study variance by DerSimonian & Laird 1986 (Controlled Clinical Trials 7),
 * interval by Hartung & Knapp 2001 (Statistics in Medicine 20), prediction interval by Higgins, Thompson &
 * Spiegelhalter 2009 (JRSS A 172). Kept as a companion to plain unweighted pooling (`meanInterval`), which keeps
 * its error rate when sizes differ much.
 *
 * @throws StatisticsError `sample-too-small` under two studies, `bad-argument` unless standard errors > 0
 */
export function randomEffects(studies: readonly Study[], level: number): RandomEffects {
  requireFraction('randomEffects', 'level', level);
  requireAtLeast('randomEffects', 'studies', studies.length, 2);
  for (const { standardError } of studies) requirePositive('randomEffects', 'standard error', standardError);
  const df = studies.length - 1;
  const fixed = studies.map(({ standardError }) => 1 / standardError ** 2);
  const fixedTotal = compensatedSum(fixed);
  const q = spread(studies, fixed, weightedMean(studies, fixed));
  const scale = fixedTotal - compensatedSum(fixed.map((weight) => weight * weight)) / fixedTotal;
  const between = Math.max(0, (q - df) / scale);

  const weights = studies.map(({ standardError }) => 1 / (standardError ** 2 + between));
  const total = compensatedSum(weights);
  const estimate = weightedMean(studies, weights);
  const standardError = Math.sqrt(1 / total);
  const statistic = estimate / standardError;
  const half = normalQuantile((1 + level) / 2) * standardError;
  const knapp = Math.sqrt(spread(studies, weights, estimate) / (df * total));
  const reach = df >= 2 ? tQuantile((1 + level) / 2, df - 1) * Math.sqrt(between + 1 / total) : null;
  return {
    between,
    heterogeneity: { q, df, p: gammainc(q / 2, df / 2, true, true) },
    wald: {
      estimate,
      standardError,
      df: Infinity,
      statistic,
      p: 2 * normalUpper(Math.abs(statistic)),
      ci: [estimate - half, estimate + half],
      level,
    },
    hartungKnapp: familyInterval({ estimate, standardError: knapp, df }, level, 2),
    prediction: reach === null ? null : [estimate - reach, estimate + reach],
  };
}

function weightedMean(studies: readonly Study[], weights: readonly number[]): number {
  return (
    compensatedSum(studies.map(({ estimate }, i) => estimate * (weights[i] ?? 0))) / compensatedSum(weights)
  );
}

function spread(studies: readonly Study[], weights: readonly number[], mean: number): number {
  return compensatedSum(studies.map(({ estimate }, i) => (weights[i] ?? 0) * (estimate - mean) ** 2));
}
