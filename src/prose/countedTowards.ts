import type { Interval } from '../findings/findings.ts';
import type { Difference, PairAnswer } from './statement.ts';

type Sided = Pick<PairAnswer, 'about' | 'ahead' | 'by'>;

/** 1 where `a` minus `b` is counted the way the answer is, towards the one ahead in the direction it is ahead by; else -1. */
export function sideOf({ about, ahead, by }: Sided): 1 | -1 {
  return (ahead === about.a) === (by === 'more') ? 1 : -1;
}

/** An interval of `a` minus `b` counted the way the answer is. */
export function intervalTowards(answer: Sided, [low, high]: Interval): Interval {
  return sideOf(answer) === 1 ? [low, high] : [-high, -low];
}

/** A difference of `a` minus `b` counted the way the answer is. */
export function differenceTowards(answer: Sided, { estimate, ci }: Difference): Difference {
  return { estimate: sideOf(answer) * estimate, ci: intervalTowards(answer, ci) };
}
