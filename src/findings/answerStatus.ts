import type { Credit, MetricFindings, StatusId, VerdictId } from './findings.ts';
import { isGap } from './verdict.ts';

interface Answered {
  readonly verdict: VerdictId;
  readonly credit: Credit;
  /** Whether most of the other ways to work it out disagree. */
  readonly leans: boolean;
}

/** The answer as it is printed: an open cause comes before checks that disagree, and both before the verdict. */
export function statusOf({ verdict, credit, leans }: Answered): StatusId {
  if (verdict === 'not-judged') return 'not-judged';
  if (credit === 'open') return isGap(verdict) ? 'cause-unclear' : 'cannot-tell';
  if (leans) return 'not-confirmed';
  switch (verdict) {
    case 'clear':
    case 'small':
    case 'level':
      return verdict;
    case 'size-unsure':
    case 'maybe-small':
      return 'size-uncertain';
    case 'too-close':
      return 'cannot-tell';
  }
}

/** Which of a pair is ahead by an estimate of `a` minus `b`; where neither way is wanted, the one with more. */
export function aheadBy(estimate: number, better: MetricFindings['better']): 'a' | 'b' | null {
  if (estimate === 0) return null;
  return estimate > 0 === (better !== 'less') ? 'a' : 'b';
}
