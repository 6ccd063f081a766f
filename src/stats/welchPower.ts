import { noncentralTUpper } from './distributions/noncentralT.ts';
import { studentizedRangeQuantile } from './distributions/studentizedRange.ts';
import { tQuantile } from './distributions/t.ts';
import type { Test } from './judgedBy.ts';
import { requireAtLeast, requireFraction } from './statisticsError.ts';

/** Points of the average over the variances' shares; the integrand is periodic and smooth in the angle. */
const POINTS = 12;
/** From so many values a group on the two sample variances hardly differ: their middle share stands for all. */
const MANY = 100;

interface Critical {
  readonly value: number;
  /** Of all, which add up to 1. */
  readonly weight: number;
}

/**
 * Chance that the Welch or Games-Howell interval of one pair, of equal n and truly equal spread, leaves out 0
 * when the true gap is `gap` standard deviations: exact for two groups. With equal n the statistic is the pooled t;
 * given the first variance's share r of the two, which is independent of it and beta((n - 1) / 2, (n - 1) / 2), the
 * df are (n - 1) / (r^2 + (1 - r)^2). The chance is the average over r, here good to 1e-7 from n = 5.
 */
export function welchPower(gap: number, test: Test): number {
  const { n } = test;
  const delta = gap * Math.sqrt(n / 2);
  const df = 2 * n - 2;
  return criticals(test).reduce(
    (sum, { value, weight }) =>
      sum + weight * (noncentralTUpper(value, df, delta) + noncentralTUpper(value, df, -delta)),
    0,
  );
}

/** The critical value on average over the share of the variances. */
export function meanCritical(test: Test): number {
  return criticals(test).reduce((sum, { value, weight }) => sum + weight * value, 0);
}

// Searches ask for the same few whole numbers again, metric by metric and report by report.
const known = new Map<string, readonly Critical[]>();
const mostKnown = 10_000;

function criticals({ n, k, level }: Test): readonly Critical[] {
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

function workedOut(n: number, k: number, level: number): readonly Critical[] {
  // r = sin^2 of an angle up to a right one; both halves alike, so only r <= 1/2, the middle counted half.
  const points = Array.from({ length: POINTS }, (_, index) => index + 1).slice(n >= MANY ? -1 : 0);
  const weighted = points.map((point): Critical => {
    const angle = (Math.PI * point) / (4 * POINTS);
    const r = Math.sin(angle) ** 2;
    const df = (n - 1) / (r * r + (1 - r) * (1 - r));
    return {
      value: criticalT(level, k, df),
      weight: Math.sin(2 * angle) ** (n - 2) * (point === POINTS ? 0.5 : 1),
    };
  });
  const total = weighted.reduce((sum, { weight }) => sum + weight, 0);
  return weighted.map(({ value, weight }) => ({ value, weight: weight / total }));
}

/** q(level; k, df) / sqrt(2): Student's t for two. */
export function criticalT(level: number, k: number, df: number): number {
  return k === 2 ? tQuantile((1 + level) / 2, df) : studentizedRangeQuantile(level, k, df) / Math.SQRT2;
}
