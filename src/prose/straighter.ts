import type { Findings, PairFindings } from '../findings/findings.ts';
import { isGap } from '../findings/verdict.ts';
import type { Difference } from './statement.ts';

/** One that finished nearer the target line than another, by how much on average, SI. */
export interface Nearer {
  readonly nearer: string;
  readonly farther: string;
  readonly difference: Difference;
}

/** Whether any finished nearer the target line; seen, and never what a test set out to check. */
export interface StraighterStatement {
  readonly kind: 'straighter';
  /** Why nothing was judged; null where something was. */
  readonly notJudged: 'no-side' | 'too-few-shots' | 'aim-off-line' | null;
  readonly clear: readonly Nearer[];
  readonly explored: Findings['explored'];
}

/** What the distances from the target line bear. */
export function straighterOf({
  straighter,
  explored,
}: Pick<Findings, 'straighter' | 'explored'>): StraighterStatement {
  const own = { kind: 'straighter', explored } as const;
  if (straighter === null) return { ...own, notJudged: 'no-side', clear: [] };
  if (straighter.every(({ verdict }) => verdict === 'not-judged')) {
    const off = straighter.some(({ notJudged }) => notJudged?.because === 'aim-off-line');
    return { ...own, notJudged: off ? 'aim-off-line' : 'too-few-shots', clear: [] };
  }
  return { ...own, notJudged: null, clear: straighter.flatMap((pair) => nearerOf(pair) ?? []) };
}

/** Who of a pair finished nearer the line; null where that is not sure, or its cause is open. */
export function nearerOf({ a, b, verdict, credit, estimate, ci }: PairFindings): Nearer | null {
  if (!isGap(verdict) || credit !== 'contender' || estimate === null || ci === null) return null;
  return estimate < 0
    ? { nearer: a, farther: b, difference: { estimate: -estimate, ci: [-ci[1], -ci[0]] } }
    : { nearer: b, farther: a, difference: { estimate, ci } };
}
