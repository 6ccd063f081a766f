import type { MetricFindings, PairFindings } from '../findings/findings.ts';

/** The pair of a metric whose averages lie farthest apart, with how far, SI; null where none was judged. */
export function widestPair({ pairs }: MetricFindings): {
  readonly pair: PairFindings;
  readonly estimate: number;
} | null {
  const [widest] = pairs
    .flatMap((pair) => (pair.estimate === null ? [] : [{ pair, estimate: Math.abs(pair.estimate) }]))
    .toSorted((one, other) => other.estimate - one.estimate);
  return widest ?? null;
}
