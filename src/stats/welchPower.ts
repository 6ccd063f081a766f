import { noncentralTBeyond, type WeightedPoint } from './distributions/noncentralT.ts';
import { criticalRange } from './distributions/criticalRange.ts';
import { tQuantile } from './distributions/t.ts';
import { gaussJacobi } from './gaussJacobi.ts';
import type { Test } from './judgedBy.ts';
import { requireAtLeast, requireFraction } from './statisticsError.ts';

/** Nodes of the average over the variances' shares. */
const NODES = 4;
/** From so many values a group on the two sample variances hardly differ: their middle share stands for all. */
const MANY = 100;

/**
 * Chance that the Welch or Games-Howell interval of one pair, of equal n and truly equal spread, leaves out 0
 * when the true gap is `gap` standard deviations: exact for two groups. With equal n the statistic is the pooled t;
 * given the first variance's share r of the two, which is independent of it and beta((n - 1) / 2, (n - 1) / 2), the
 * df are (n - 1) / (r^2 + (1 - r)^2). The chance is the average over r, here good to 1e-7 from n = 5: 1 / df is a straight
 * line in y = (2 r - 1)^2, which is beta(1/2, (n - 1) / 2), so that four nodes of Gauss and Jacobi serve.
 */
export function welchPower(gap: number, test: Test): number {
  const { n } = test;
  const delta = gap * Math.sqrt(n / 2);
  const df = 2 * n - 2;
  return noncentralTBeyond(criticals(test), df, delta);
}

/** The critical value on average over the share of the variances. */
export function meanCritical(test: Test): number {
  return criticals(test).reduce((sum, { t, weight }) => sum + weight * t, 0);
}

// Searches ask for the same few whole numbers again, metric by metric and report by report.
const known = new Map<string, readonly WeightedPoint[]>();
const mostKnown = 10_000;

function criticals({ n, k, level }: Test): readonly WeightedPoint[] {
  requireFraction('welchPower', 'level', level);
  requireAtLeast('welchPower', 'values a group', n, 3);
  const key = `${level} ${k} ${n}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const found = workedOut(n, k, level);
  if (known.size >= mostKnown) known.clear();
  known.set(key, found);
  return found;
}

function workedOut(n: number, k: number, level: number): readonly WeightedPoint[] {
  const shares = n >= MANY ? [{ at: 0, weight: 1 }] : gaussJacobi((n - 3) / 2, -0.5, NODES);
  return shares.map(({ at, weight }) => ({ t: criticalT(level, k, (2 * (n - 1)) / (1 + at)), weight }));
}

/** q(level; k, df) / sqrt(2): Student's t for two. */
export function criticalT(level: number, k: number, df: number): number {
  return k === 2 ? tQuantile((1 + level) / 2, df) : criticalRange(level, k, df) / Math.SQRT2;
}
