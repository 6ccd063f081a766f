import type { MetricFindings } from '../findings/findings.ts';
import type { PooledGap } from '../findings/pooledGap.ts';
import type { Difference, PairAnswer } from './statement.ts';

/** What several reports come to together. */
export type Pooled = Exclude<PooledGap, { readonly kind: 'none' }>;

/** The answer of several reports about one pair, as judged together. */
export function pooledAnswer(
  {
    estimate,
    ci,
    status,
    verdict,
    ahead: side,
  }: Pick<Pooled, 'estimate' | 'ci' | 'status' | 'verdict' | 'ahead'>,
  { a, b }: { readonly a: string; readonly b: string },
  { id, better, matters }: Pick<MetricFindings, 'id' | 'better' | 'matters'>,
): PairAnswer {
  const [ahead, behind] = side === 'b' ? [b, a] : [a, b];
  return {
    kind: 'pair-answer',
    about: { of: 'pair', metric: id, a, b },
    status,
    ahead,
    behind,
    by: better === 'less' ? 'less' : 'more',
    difference: towards({ estimate, ci }, side, better),
    matters,
    firstLook: false,
    alike: verdict === 'level' || verdict === 'too-close',
    withinMatters: false,
    because: null,
    spellsAlike: false,
    hitLater: null,
    places: null,
    unconfirmed: null,
    notJudged: null,
  };
}

/** A difference `a` minus `b`, counted towards the one ahead in the direction that is wanted. */
export function towards(
  { estimate, ci: [low, high] }: Difference,
  side: Pooled['ahead'],
  better: MetricFindings['better'],
): Difference {
  const turned = (side === 'b') !== (better === 'less');
  return turned ? { estimate: -estimate, ci: [-high, -low] } : { estimate, ci: [low, high] };
}
