import type { Findings, MetricFindings } from '../findings/findings.ts';
import type { MetricId } from '../trade/metrics.ts';

/** Which of a metric's spreads differ clearly; seen, and never what a test set out to check. */
export interface SpreadStatement {
  readonly kind: 'spread';
  readonly metric: MetricId;
  /** Null where there are too few shots to judge, or several golfers. */
  readonly differing: readonly { readonly steadier: string; readonly other: string }[] | null;
  readonly explored: Findings['explored'];
}

/** What the spreads of a metric bear. */
export function spreadOf(
  { id, spread }: MetricFindings,
  { explored }: Pick<Findings, 'explored'>,
): SpreadStatement {
  const differing =
    spread?.pairs
      .filter(({ clear }) => clear)
      .map(({ a, b, tighter }) =>
        tighter === 'a' ? { steadier: a, other: b } : { steadier: b, other: a },
      ) ?? null;
  return { kind: 'spread', metric: id, differing, explored };
}
