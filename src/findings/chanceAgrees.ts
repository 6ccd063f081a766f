import type { MetricFindings, PairFindings } from './findings.ts';

/**
 * Whether a difference beyond what chance makes one time in twenty, or within it, goes with the printed answer: one that
 * is seen lies beyond, one that cannot be told or is none within.
 */
export function chanceAgrees(
  { estimate, status }: PairFindings,
  { luck }: Pick<MetricFindings, 'luck'>,
): boolean {
  if (estimate === null || luck === null) return false;
  const seen =
    status === 'clear' || status === 'size-uncertain' || status === 'small' || status === 'cause-unclear';
  return Math.abs(estimate) > luck.upTo === seen;
}
