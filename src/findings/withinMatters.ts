import type { Interval } from './findings.ts';
import { nearlyMatters } from './thresholds.ts';

/** Whether two are as good as within what matters of each other, though which has more cannot be told. SI. */
export function isWithinMatters([lower, upper]: Interval, matters: number): boolean {
  return Math.max(Math.abs(lower), Math.abs(upper)) <= nearlyMatters * matters;
}
