import { at } from '../../../stats/at.ts';
import { compensatedSum } from '../../../stats/compensatedSum.ts';
import { meanOf } from '../../../stats/moments.ts';

/** Pearson's correlation of two series of one length; null where either does not vary. */
export function correlation(x: readonly number[], y: readonly number[]): number | null {
  if (x.length < 2 || x.length !== y.length) return null;
  const [meanX, meanY] = [meanOf(x), meanOf(y)];
  const product = compensatedSum(x.map((value, index) => (value - meanX) * (at(y, index) - meanY)));
  const squares = (values: readonly number[], mean: number): number =>
    compensatedSum(values.map((value) => (value - mean) ** 2));
  const size = Math.sqrt(squares(x, meanX) * squares(y, meanY));
  return size > 0 ? Math.max(-1, Math.min(1, product / size)) : null;
}
