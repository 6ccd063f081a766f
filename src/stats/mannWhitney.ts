import { normalUpper } from './distributions/normal.ts';
import { compensatedSum } from './compensatedSum.ts';
import { midranks } from './midranks.ts';
import { requireAtLeast, requireFinite, StatisticsError } from './statisticsError.ts';

/** `u` counts the pairs in which the first group's value is larger, ties as a half. */
export interface MannWhitney {
  readonly u: number;
  readonly p: number;
  readonly method: 'exact' | 'normal';
}

const MOST_FOR_EXACT = 200;

/**
 * Mann & Whitney's test (1947; Wilcoxon 1945), two-sided p = twice the smaller tail, at most 1. Up to 200 values
 * in all it is exact: the distribution of the rank sum over all ways to deal the midranks found, ties included,
 * counted by the usual recurrence. Beyond that the normal approximation with tie and continuity corrections.
 *
 * @throws StatisticsError `sample-too-small` for an empty group, `no-spread` when all values are equal
 */
export function mannWhitney(first: readonly number[], second: readonly number[]): MannWhitney {
  requireAtLeast('mannWhitney', 'values a group', Math.min(first.length, second.length), 1);
  const all = [...first, ...second];
  requireFinite('mannWhitney', all);
  const { ranks, ties } = midranks(all);
  if (ties[0] === all.length) throw new StatisticsError('no-spread', 'mannWhitney', 'all values are equal');
  const m = first.length;
  const rankSum = compensatedSum(ranks.slice(0, m));
  const u = rankSum - (m * (m + 1)) / 2;
  if (all.length <= MOST_FOR_EXACT) return { u, p: exactP(ranks, m), method: 'exact' };
  return { u, p: normalP(u, m, second.length, ties), method: 'normal' };
}

/** From the ranks of all, the first group's `first` in front; worked out for the smaller group. */
function exactP(ranks: readonly number[], first: number): number {
  const ofFirst = 2 * first <= ranks.length;
  const m = ofFirst ? first : ranks.length - first;
  const rankSum = compensatedSum(ofFirst ? ranks.slice(0, first) : ranks.slice(first));
  // midranks are halves: doubled, they are whole
  const doubled = ranks.map((rank) => Math.round(2 * rank));
  const most = doubled
    .toSorted((a, b) => b - a)
    .slice(0, m)
    .reduce((sum, rank) => sum + rank, 0);
  const ways = Array.from({ length: m + 1 }, () => new Float64Array(most + 1));
  const none = ways[0];
  if (none !== undefined) none[0] = 1;
  doubled.forEach((rank, dealt) => {
    for (let size = Math.min(m, dealt + 1); size > 0; size--) {
      const to = ways[size];
      const from = ways[size - 1];
      if (to === undefined || from === undefined) continue;
      for (let sum = most; sum >= rank; sum--) to[sum] = (to[sum] ?? 0) + (from[sum - rank] ?? 0);
    }
  });
  const counts = ways[m] ?? new Float64Array(1);
  const seen = Math.round(2 * rankSum);
  const total = compensatedSum(counts);
  const below = compensatedSum(counts.subarray(0, seen + 1)) / total;
  const above = compensatedSum(counts.subarray(seen)) / total;
  return Math.min(1, 2 * Math.min(below, above));
}

function normalP(u: number, m: number, n: number, ties: readonly number[]): number {
  const total = m + n;
  const tied = compensatedSum(ties.map((size) => size ** 3 - size)) / (total * (total - 1));
  const deviation = Math.sqrt(((m * n) / 12) * (total + 1 - tied));
  const distance = Math.max(0, Math.abs(u - (m * n) / 2) - 0.5);
  return Math.min(1, 2 * normalUpper(distance / deviation));
}
