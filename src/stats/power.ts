import { noncentralTUpper } from './distributions/noncentralT.ts';
import { studentizedRangeQuantile } from './distributions/studentizedRange.ts';
import { tQuantile } from './distributions/t.ts';
import { findRoot } from './findRoot.ts';
import { requireAtLeast, requireFraction, requirePositive, StatisticsError } from './statisticsError.ts';

/** A test of k groups of n values each, all pairs compared at `level`. */
export interface Test {
  readonly n: number;
  readonly k: number;
  readonly level: number;
}

const MOST_SHOTS = 1_000_000;

/**
 * Chance that the interval of one pair whose true gap is `gap` standard deviations leaves out 0: noncentral t
 * with 2n - 2 df, noncentrality gap sqrt(n / 2), critical value q(level; k, 2n - 2) / sqrt(2). Exact for two
 * groups of equal spread; for more within 2 % of Games-Howell from n = 8 (our simulation).
 */
export function power(gap: number, test: Test): number {
  const critical = criticalT(test);
  return beyond(critical, test.n, gap);
}

/** The gap, in standard deviations, that such a test sees with this chance (0.8: four times in five). */
export function leastGap(test: Test, chance = 0.8): number {
  requireFraction('leastGap', 'chance', chance);
  const critical = criticalT(test);
  const scale = Math.sqrt(test.n / 2);
  const lowest = beyond(critical, test.n, 0);
  if (chance <= lowest)
    throw new StatisticsError('bad-argument', 'leastGap', `chance ${chance} needs no gap`);
  let high = (critical + 3) / scale;
  while (beyond(critical, test.n, high) < chance) high *= 2;
  return findRoot((gap) => beyond(critical, test.n, gap) - chance, 0, high, 1e-12);
}

/**
 * Fewest values a group with which a true gap of `gap` standard deviations is seen with this chance.
 * @throws StatisticsError `bad-argument` when more than a million would be needed
 */
export function shotsNeeded(gap: number, k: number, level: number, chance = 0.8): number {
  requirePositive('shotsNeeded', 'gap', gap);
  requireFraction('shotsNeeded', 'chance', chance);
  return fewest('shotsNeeded', (n) => power(gap, { n, k, level }) >= chance);
}

/**
 * Fewest values a group with which equal groups can be shown to lie within `gap` standard deviations at all:
 * q(level; k, 2n - 2) / sqrt(n) < gap, the half-width of the interval of two equal groups.
 */
export function shotsToShowLevel(gap: number, k: number, level: number): number {
  requirePositive('shotsToShowLevel', 'gap', gap);
  return fewest('shotsToShowLevel', (n) => halfWidthInSd({ n, k, level }) < gap);
}

/** Half-width of a pair's interval, in standard deviations: q(level; k, 2n - 2) / sqrt(n). */
export function halfWidthInSd(test: Test): number {
  return criticalT(test) * Math.sqrt(2 / test.n);
}

function criticalT({ n, k, level }: Test): number {
  requireFraction('power', 'level', level);
  requireAtLeast('power', 'values a group', n, 2);
  const df = 2 * n - 2;
  if (k === 2) return tQuantile((1 + level) / 2, df);
  const key = `${level} ${k} ${df}`;
  const value = known.get(key) ?? studentizedRangeQuantile(level, k, df) / Math.SQRT2;
  if (known.size >= mostKnown) known.clear();
  known.set(key, value);
  return value;
}

// Searches for a number of shots ask for the same few whole numbers again, metric by metric and report by report.
const known = new Map<string, number>();
const mostKnown = 10_000;

function beyond(critical: number, n: number, gap: number): number {
  const df = 2 * n - 2;
  const delta = gap * Math.sqrt(n / 2);
  return noncentralTUpper(critical, df, delta) + noncentralTUpper(critical, df, -delta);
}

/** Smallest n from 2 that is enough; `enough` never turns false again once true. */
function fewest(name: string, enough: (n: number) => boolean): number {
  if (enough(2)) return 2;
  let tooFew = 2;
  let plenty = 4;
  while (!enough(plenty)) {
    tooFew = plenty;
    plenty *= 2;
    if (plenty > MOST_SHOTS) {
      throw new StatisticsError(
        'bad-argument',
        name,
        `more than ${MOST_SHOTS} values a group would be needed`,
      );
    }
  }
  while (plenty - tooFew > 1) {
    const middle = (tooFew + plenty) >> 1;
    if (enough(middle)) plenty = middle;
    else tooFew = middle;
  }
  return plenty;
}
