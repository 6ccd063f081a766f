import type { Interval } from '../../../findings/findings.ts';
import { isWithinMatters } from '../../../findings/withinMatters.ts';
import { toCanonical, type UnitId } from '../../../trade/units.ts';
import { printStated } from '../../numbers.ts';
import { printDifference, printLimits, type PrintedLimit, type Printing } from '../../printSteps.ts';
import { withUnit } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { countWord, listed } from '../../words.ts';
import { limitWords } from '../ranges.ts';

/** Where there is room for a number only: nearer to 0 than the step, and on one side of it. */
const almostZero = 'almost 0';

/** A difference counted towards the first-named of two, SI. */
interface CountedDifference {
  readonly first: string;
  readonly second: string;
  readonly estimate: number;
  readonly ci: Interval;
}

/**
 * The likely range in words: "likely 2 to 16 yards", "anything from 7 yards for Sorrel to 6 for Rowan". The unit may be left out where it
 * stands right before.
 */
export function rangeWords(
  { first, second, ci }: Omit<CountedDifference, 'estimate'>,
  printing: Printing,
  withItsUnit = true,
): string {
  const { matters } = printing;
  const unit: UnitId = withItsUnit ? printing.unit : '1';
  const limits = printLimits(ci, printing);
  const [lower, upper] = [limitWords(limits.lower), limitWords(limits.upper)];
  if (ci[0] > 0) {
    if (limits.upper.kind === 'almost-nothing') return 'likely almost nothing';
    const from = limits.lower.kind === 'almost-nothing' ? 'between almost nothing and' : `${lower} to`;
    return `likely ${from} ${withUnit(upper, unit)}`;
  }
  if (ci[1] < 0)
    return `${rangeWords({ first: second, second: first, ci: [-ci[1], -ci[0]] }, printing, withItsUnit)} for ${second}`;
  if (isWithinMatters(ci, toCanonical(matters, printing.unit)))
    return `within about ${withUnit(printStated(matters), printing.unit)} of each other`;
  return `anything from ${withUnit(upper, printing.unit)} for ${first} to ${lower} for ${second}`;
}

/** Estimate and likely range: "about 9 yards, likely 2 to 16"; where the two may stand either way round, the range alone. */
export function estimateAndRange(difference: CountedDifference, printing: Printing): string {
  const { estimate, ci } = difference;
  if (ci[0] <= 0 && ci[1] >= 0) return rangeWords(difference, printing);
  const about = withUnit(printDifference(estimate, printing), printing.unit);
  return `about ${about}, ${rangeWords(difference, printing, false)}`;
}

/** Best estimate and both limits as they stand beside a bar, their signs dropped. */
export function barNumbers(
  estimate: number,
  ci: Interval,
  printing: Printing,
): { readonly estimate: string; readonly low: string; readonly high: string } {
  const { lower, upper } = printLimits(ci, printing);
  const bare = (limit: PrintedLimit): string =>
    limit.kind === 'almost-nothing' ? almostZero : limitWords(limit);
  return { estimate: printDifference(estimate, printing), low: bare(lower), high: bare(upper) };
}

/** Best estimate and both limits for the cells of a table, counted towards the first-named; the same digits as in sentences. */
export function differenceCells(
  estimate: number,
  ci: Interval,
  printing: Printing,
): readonly [estimate: string, lower: string, upper: string] {
  const { lower, upper } = printLimits(ci, printing);
  const size = printDifference(estimate, printing);
  return [
    estimate < 0 && Number(size) !== 0 ? `−${size}` : size,
    limitCell(lower, ci[0] < 0),
    limitCell(upper, ci[1] < 0),
  ];
}

/** A limit with its sign; in words where a number would lie on the other side of 0 or of what matters. */
function limitCell(limit: PrintedLimit, negative: boolean): string {
  if (limit.kind === 'almost-nothing') return almostZero;
  if (!negative) return limitWords(limit);
  switch (limit.kind) {
    case 'number':
      return `−${limit.text}`;
    case 'just-over':
      return `just below −${limit.text}`;
    case 'just-under':
      return `just above −${limit.text}`;
  }
}

/** Both limits of a spread. */
export function spreadLimits(ci: Interval, printing: Printing): readonly [lower: string, upper: string] {
  const { low, high } = barNumbers(0, ci, { ...printing, matters: Infinity });
  return [low, high];
}

/** Heads of the columns that `differenceCells` fills. */
export const differenceHeads = (inUnit: string): readonly string[] => [
  `Best estimate${inUnit}`,
  'Likely range, from',
  'to',
];

/** What was compared, all or some, by name, or by number where names would run on. */
export function comparedNames(
  { findings, nouns, the }: Telling,
  ids: readonly string[] = findings.contenders.map(({ id }) => id),
): string {
  return ids.length > 3 ? `the ${countWord(ids.length)} ${nouns}` : listed(ids.map(the));
}

export const inBrackets = (sign: string): string => (sign === '' ? '' : ` (${sign})`);

/** In place of a range. */
export const tooFewShots = 'too few shots to say';
