import type { ContenderSummary, PairFindings } from './findings.ts';

/**
 * The contender with the best average and all that are not clearly behind it; null where any credit is open, or the
 * metric has no better side, or the best was not judged.
 */
export function leadingGroup(
  summaries: readonly ContenderSummary[],
  pairs: readonly PairFindings[],
  better: 'more' | 'less' | 'neither',
): readonly string[] | null {
  if (better === 'neither' || pairs.some(({ credit }) => credit === 'open')) return null;
  const judged = summaries.filter(({ id }) =>
    pairs.some(({ a, b, ci }) => ci !== null && (a === id || b === id)),
  );
  const sign = better === 'more' ? 1 : -1;
  const [best] = [...judged].sort((x, y) => sign * ((y.mean ?? 0) - (x.mean ?? 0)));
  if (best === undefined) return null;
  const level = judged.filter(({ id }) => {
    const pair = pairs.find(({ a, b }) => (a === best.id && b === id) || (b === best.id && a === id));
    return id === best.id || (pair?.ci != null && pair.ci[0] <= 0 && pair.ci[1] >= 0);
  });
  return level.map(({ id }) => id);
}
