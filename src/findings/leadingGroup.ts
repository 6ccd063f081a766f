import type { PairFindings } from './findings.ts';
import { isGap } from './verdict.ts';

/**
 * The contender with the best average and all that are not clearly behind it, in the order they are listed; null where
 * any credit is open, or the metric has no better side, or nothing was judged. A gap that does not hold when worked
 * out otherwise puts nobody behind.
 */
export function leadingGroup(
  pairs: readonly PairFindings[],
  better: 'more' | 'less' | 'neither',
): readonly string[] | null {
  const judged = pairs.filter(({ verdict }) => verdict !== 'not-judged');
  if (better === 'neither' || judged.length === 0 || pairs.some(({ credit }) => credit === 'open'))
    return null;
  const ids = [...new Set(judged.flatMap(({ a, b }) => [a, b]))];
  const sign = better === 'more' ? 1 : -1;
  // Gaps add up where every pair was judged: the sum over its gaps sorts contenders as their averages do.
  const lead = (id: string): number =>
    sign *
    judged.reduce((sum, { a, b, estimate }) => sum + (estimate ?? 0) * (a === id ? 1 : b === id ? -1 : 0), 0);
  const [best] = ids.toSorted((x, y) => lead(y) - lead(x));
  if (best === undefined) return null;
  const behind = (id: string): boolean =>
    judged.some(
      ({ a, b, verdict, overlays }) =>
        ((a === best && b === id) || (a === id && b === best)) &&
        isGap(verdict) &&
        !overlays.includes('leans'),
    );
  return ids.filter((id) => !behind(id));
}
