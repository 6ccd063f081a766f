import type { Interval } from './findings.ts';

/** Both limits within this much of what matters: as good as within it of each other. */
const nearlyMatters = 1.15;

/** Whether two are as good as within what matters of each other, though which has more cannot be told. SI. */
export function isWithinMatters([lower, upper]: Interval, matters: number): boolean {
  return Math.max(Math.abs(lower), Math.abs(upper)) <= nearlyMatters * matters;
}
