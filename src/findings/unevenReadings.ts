import type { Session } from '../intake/session.ts';
import type { MetricId } from '../trade/metrics.ts';
import { unevenBeyond } from './thresholds.ts';

/**
 * Whether readings of a metric are missing for one of a pair by more than one counted shot and ten points more than for the
 * other: what is missing may be the low or the high ones.
 */
export function isUnevenlyRead({ shots }: Session, metric: MetricId, a: string, b: string): boolean {
  const missing = (id: string): { readonly count: number; readonly share: number } => {
    const counted = shots.filter(({ contender, excluded }) => contender === id && excluded === null);
    const count = counted.filter(({ values }) => typeof values[metric] !== 'number').length;
    return { count, share: counted.length === 0 ? 0 : count / counted.length };
  };
  const [first, second] = [missing(a), missing(b)];
  return (
    Math.abs(first.count - second.count) > unevenBeyond.shots &&
    Math.abs(first.share - second.share) > unevenBeyond.share
  );
}
