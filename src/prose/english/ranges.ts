import type { Difference, PairAnswer } from '../statement.ts';
import { printDifference, printLimits, type PrintedLimit, type Printing } from '../printSteps.ts';
import { printStated } from '../numbers.ts';
import { withUnit } from '../readerUnits.ts';
import type { Telling } from '../telling.ts';

/** A limit in words or figures: "9", "almost nothing", "just over 4". */
export function limitWords(limit: PrintedLimit): string {
  switch (limit.kind) {
    case 'number':
      return limit.text;
    case 'almost-nothing':
      return 'almost nothing';
    case 'just-over':
      return `just over ${limit.text}`;
    case 'just-under':
      return `just under ${limit.text}`;
  }
}

/** A limit with its unit: "7 yards", "almost nothing". */
export function limitWithUnit(limit: PrintedLimit, { unit }: Printing): string {
  return limit.kind === 'almost-nothing'
    ? limitWords(limit)
    : limitWords({ ...limit, text: withUnit(limit.text, unit) });
}

/** A range on one side of 0: "9 to 15", "between almost nothing and 11"; with its unit where wanted. */
export function oneSidedRange({ ci }: Difference, printing: Printing, unit: boolean): string {
  const { lower, upper } = printLimits(ci, printing);
  const end = unit ? limitWithUnit(upper, printing) : limitWords(upper);
  return lower.kind === 'almost-nothing'
    ? `between almost nothing and ${end}`
    : `${limitWords(lower)} to ${end}`;
}

/** A range that reaches from one thing to the other: "anything from 7 yards for the fairway wood to 6 for the hybrid". */
export function twoSidedRange(
  { ci }: Difference,
  [ahead, behind]: readonly [string, string],
  printing: Printing,
  telling: Telling,
): string {
  const { lower, upper } = printLimits(ci, printing);
  return `anything from ${limitWithUnit(upper, printing)} for ${telling.the(ahead)} to ${limitWords(lower)} for ${telling.the(behind)}`;
}

/** The best estimate with its unit: "12 yards". */
export function estimateWords({ estimate }: Difference, printing: Printing): string {
  return withUnit(printDifference(estimate, printing), printing.unit);
}

/** A size told as the least that would be found, or the most it may be off: rounded up, and on its side of what matters. */
export function atLeastWords(si: number, printing: Printing): string {
  return limitWithUnit(printLimits([0, si], printing).upper, printing);
}

/** What matters, with its unit: "4 yards". */
export function mattersWords({ matters, unit }: Pick<Printing, 'matters' | 'unit'>): string {
  return withUnit(printStated(matters), unit);
}

/** How far one thing is ahead, after "by": "2 to 11 yards", "up to 11 yards". */
export function byRange({ ci }: Difference, printing: Printing): string {
  const { lower, upper } = printLimits(ci, printing);
  const end = limitWithUnit(upper, printing);
  return lower.kind === 'almost-nothing' ? `up to ${end}` : `${limitWords(lower)} to ${end}`;
}

/**
 * Best estimate and likely range of one pair without its names where they are not needed: "about 12 yards, likely 9 to
 * 15", "anything from 7 yards for the fairway wood to 6 for the hybrid"; empty where the pair was not judged.
 */
export function numbersOf(answer: PairAnswer, printing: Printing, telling: Telling): string {
  const { difference, ahead, behind, status } = answer;
  if (difference === null) return '';
  if (status === 'level') return `any difference is likely under ${mattersWords(printing)}`;
  if (difference.ci[0] <= 0) return twoSidedRange(difference, [ahead, behind], printing, telling);
  const shots = answer.spellsAlike ? 'shot by shot ' : '';
  return `${shots}about ${estimateWords(difference, printing)}, likely ${oneSidedRange(difference, printing, false)}`;
}
