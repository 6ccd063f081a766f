import type { PairFindings } from './findings.ts';
import { isGap } from './verdict.ts';

/**
 * The contender with the best average and all that are not clearly behind it, in the order they are listed: those that a
 * headline names. Null where no pair is credited, or the metric has no better side. A gap whose cause is open, or that
 * does not hold when worked out otherwise, puts nobody behind; where the gap to the best is open, a credited one to
 * another of the group does.
 */
export function leadingGroup(
  pairs: readonly PairFindings[],
  better: 'more' | 'less' | 'neither',
): readonly string[] | null {
  const judged = pairs.filter(({ verdict }) => verdict !== 'not-judged');
  if (better === 'neither' || judged.every(({ credit }) => credit === 'open')) return null;
  const ids = [...new Set(judged.flatMap(({ a, b }) => [a, b]))];
  const sign = better === 'more' ? 1 : -1;
  // Gaps add up where every pair was judged: the sum over its gaps sorts contenders as their averages do.
  const lead = (id: string): number =>
    sign *
    judged.reduce((sum, { a, b, estimate }) => sum + (estimate ?? 0) * (a === id ? 1 : b === id ? -1 : 0), 0);
  const [best, ...others] = ids.toSorted((x, y) => lead(y) - lead(x));
  if (best === undefined) return null;
  const pairOf = (x: string, y: string): PairFindings | undefined =>
    judged.find(({ a, b }) => (a === x && b === y) || (a === y && b === x));
  const group = [best];
  for (const id of others) {
    const open = pairOf(best, id)?.credit !== 'contender';
    const ahead = open ? group.filter((leader) => lead(leader) > lead(id)) : [best];
    if (!ahead.some((leader) => putsBehind(pairOf(leader, id), leader))) group.push(id);
  }
  return ids.filter((id) => group.includes(id));
}

function putsBehind(pair: PairFindings | undefined, leader: string): boolean {
  return (
    pair !== undefined &&
    pair.credit === 'contender' &&
    pair.ahead === leader &&
    isGap(pair.verdict) &&
    !pair.overlays.includes('leans')
  );
}
