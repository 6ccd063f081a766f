import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { surestFirst } from '../prose/pairAnswer.ts';

/** The most pairs that are drawn without a choice; four contenders have six. */
const mostPairs = 6;

/**
 * The pairs that a chart of a metric draws, in the order of the answer. Of more than six those among the leading group and those of the
 * reference, which is the best on average, or where nobody leads the first contender that was judged; those of the reference alone where
 * the group is too large.
 */
export function apartPairs(metric: MetricFindings): readonly PairFindings[] {
  const ordered = surestFirst(metric);
  if (ordered.length <= mostPairs) return ordered;
  const leading = metric.leading ?? [];
  const reference = referenceOf(metric, leading);
  const ofReference = ({ a, b }: PairFindings): boolean => a === reference || b === reference;
  const within = ({ a, b }: PairFindings): boolean => leading.includes(a) && leading.includes(b);
  // A group that is most of the contenders would leave nothing out.
  return ordered.filter(
    ordered.filter(within).length > mostPairs ? ofReference : (pair) => within(pair) || ofReference(pair),
  );
}

function referenceOf(metric: MetricFindings, leading: readonly string[]): string | undefined {
  const sign = metric.better === 'less' ? -1 : 1;
  const judged = metric.byContender.filter(({ id }) =>
    metric.pairs.some(({ a, b, estimate }) => estimate !== null && (a === id || b === id)),
  );
  const [best] = judged
    .flatMap(({ id, mean }) => (mean === null || !leading.includes(id) ? [] : [{ id, mean }]))
    .toSorted((x, y) => sign * (y.mean - x.mean));
  return best?.id ?? judged[0]?.id;
}
