import { metrics, type MetricId } from '../../trade/metrics.ts';
import { printLimits, type Printing } from '../printSteps.ts';
import type { Difference } from '../statement.ts';
import type { Telling } from '../telling.ts';
import { limitWithUnit, limitWords, oneSidedRange, twoSidedRange } from './ranges.ts';

/** Who is told first, and who second: ids. */
export type Sides = readonly [ahead: string, behind: string];

/** "the carry difference between Heron and Wren". */
export function differenceBetween(metric: MetricId, [ahead, behind]: Sides, telling: Telling): string {
  return `the ${metrics[metric].name} difference between ${telling.the(ahead)} and ${telling.the(behind)}`;
}

/** A range wherever it lies: "9 to 15 yards", "anything from 7 yards for Heron to 6 for Wren"; the side named if it is not the first. */
export function rangeOf(difference: Difference, sides: Sides, printing: Printing, telling: Telling): string {
  const [low, high] = difference.ci;
  if (low >= 0) return oneSidedRange(difference, printing, true);
  if (high > 0) return twoSidedRange(difference, sides, printing, telling);
  const turned = { estimate: -difference.estimate, ci: [-high, -low] } as const;
  return `${oneSidedRange(turned, printing, true)} for ${telling.the(sides[1])}`;
}

/** "between 11 and 12 yards", "between 1 yard for Wren and 5 for Heron". */
export function betweenWords(
  ci: Difference['ci'],
  [ahead, behind]: Sides,
  printing: Printing,
  telling: Telling,
): string {
  const { lower, upper } = printLimits(ci, printing);
  const end = limitWithUnit(upper, printing);
  if (ci[0] >= 0) return `between ${limitWords(lower)} and ${end}`;
  // The unit stands with the first number there is.
  const last = lower.kind === 'almost-nothing' ? end : limitWords(upper);
  return `between ${limitWithUnit(lower, printing)} for ${telling.the(behind)} and ${last} for ${telling.the(ahead)}`;
}
