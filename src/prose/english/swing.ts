import { metrics, type MetricId } from '../../trade/metrics.ts';
import { modelPrinting, unjudgedPrinting } from '../unjudgedPrinting.ts';
import { printLimits, printSize, type Printing } from '../printSteps.ts';
import { withUnit } from '../readerUnits.ts';
import type { Difference } from '../statement.ts';
import type { SwingRow, SwingSummary } from '../swing.ts';
import { printingFor, type Telling } from '../telling.ts';
import { variesBall } from '../variesBall.ts';
import { capitalised, listed } from '../words.ts';
import { comparisonOf } from './comparisons.ts';
import { rangeOf, type Sides } from './differences.ts';
import { causeOf } from './names.ts';
import { limitWithUnit, limitWords, oneSidedRange } from './ranges.ts';

/** "We cannot tell whether club speed was the same with Heron and Plover." */
export function saySwingAnswer(row: SwingRow, telling: Telling): string {
  return `${capitalised(swingAnswerClause(row, telling))}.`;
}

/** The same in running text. */
export function swingAnswerClause({ measure, a, b, answer }: SwingRow, telling: Telling): string {
  const { name } = metrics[measure];
  const both = `${telling.the(a)} and ${telling.the(b)}`;
  switch (answer) {
    case 'same':
      return `${name} was the same with ${both}, as far as it matters`;
    case 'different':
      return `${name} was not the same with ${both}`;
    case 'cannot-tell':
      return `we cannot tell whether ${name} was the same with ${both}`;
    case 'not-known':
      return `we do not know whether ${name} was the same with ${both}`;
  }
}

/** "club speed was not the same with Long and Short: 1.8 to 3.4 mph faster with Long, worth 4 to 12 yards for Long" */
export function swingClause(row: SwingRow, telling: Telling): string {
  return `${swingAnswerClause(row, telling)}: ${numbers(row, telling)}`;
}

/** "Within 0.8 mph of each other, worth up to 2 yards either way." */
export function saySwingNumbers(row: SwingRow, telling: Telling): string {
  return `${capitalised(numbers(row, telling))}.`;
}

function numbers(row: SwingRow, telling: Telling): string {
  const { measure, a, b, difference, worth, across, even } = row;
  const printing = unjudgedPrinting(printingFor(measure, telling));
  const differed = even.difference
    ? `within ${widest(difference, printing)} of each other`
    : sided(row, printing, telling);
  if (worth === null)
    return `${differed}; what that is worth is not known, as the file lacks the launch direction or the spin axis`;
  const costs = costOf(worth, [a, b], even.worth, telling);
  if (across === null) return `${differed}, worth ${costs}`;
  const name = across.metric === 'side' ? 'to the side' : `in ${metrics[across.metric].name}`;
  // Both are distances, and the file need not have the other one.
  const printed = modelPrinting(printingFor(worth.metric, telling));
  return `${differed}, worth ${costs}, and ${sizes(across, printed)} ${name}`;
}

function costOf(
  worth: NonNullable<SwingRow['worth']>,
  sides: Sides,
  isEven: boolean,
  telling: Telling,
): string {
  const printing = modelPrinting(printingFor(worth.metric, telling));
  return isEven ? `up to ${widest(worth, printing)} either way` : oneSided(worth, sides, printing, telling);
}

/** "14 yards", "9 to 16 yards": how far, whichever way. */
function sizes({ estimate, ci: [low, high] }: Difference, printing: Printing): string {
  if (low < 0 && high > 0) return `up to ${widest({ estimate, ci: [low, high] }, printing)}`;
  const ends: readonly [number, number] = low >= 0 ? [low, high] : [-high, -low];
  return oneSidedRange({ estimate: Math.abs(estimate), ci: ends }, printing, true);
}

/** The farther end of a range, rounded outwards. */
function widest({ ci: [low, high] }: Difference, printing: Printing): string {
  const most = Math.max(-low, high);
  const { upper } = printLimits([0, most], printing);
  return upper.kind === 'almost-nothing'
    ? withUnit(printSize(most, printing), printing.unit)
    : limitWithUnit(upper, printing);
}

/** "1.2 to 2.4 mph faster with Short", "anything from 3 mph faster with Heron to 0.2 slower". */
function sided({ measure, a, b, difference }: SwingRow, printing: Printing, telling: Telling): string {
  const { axis } = comparisonOf(measure);
  const {
    estimate,
    ci: [low, high],
  } = difference;
  if (low >= 0)
    return `${oneSidedRange({ estimate, ci: [low, high] }, printing, true)} ${axis.more} with ${telling.the(a)}`;
  if (high <= 0) {
    return `${oneSidedRange({ estimate: -estimate, ci: [-high, -low] }, printing, true)} ${axis.more} with ${telling.the(b)}`;
  }
  const { lower, upper } = printLimits([low, high], printing);
  return `anything from ${limitWithUnit(upper, printing)} ${axis.more} with ${telling.the(a)} to ${limitWords(lower)} with ${telling.the(b)}`;
}

function oneSided(worth: Difference, [a, b]: Sides, printing: Printing, telling: Telling): string {
  const range = rangeOf(worth, [a, b], printing, telling);
  return worth.ci[0] >= 0 ? `${range} for ${telling.the(a)}` : range;
}

/** What all measures together say of the swing. */
export function saySwingSummary(summary: SwingSummary, telling: Telling): string {
  switch (summary.kind) {
    case 'swing-too-few':
      return 'There are too few readings of the swing to compare it.';
    case 'swing-differed': {
      const cause = causeOf(telling);
      // A ball that waits where it lies changes no swing.
      const itself = variesBall(telling)
        ? `That was the golfer's doing, and we cannot separate it from ${cause}.`
        : `${capitalised(cause)} may cause that; we cannot separate the two.`;
      return `${capitalised(listed(names(summary.measures)))} differed between ${telling.nouns} by enough to matter. ${itself}`;
    }
    case 'swing-same':
      return `The swing was the same as far as we could measure: ${listed(names(summary.measures))}.`;
    case 'swing-cannot-tell':
      return 'We cannot tell whether the swing was the same.';
  }
}

/** "Not measured: attack angle and club path."; empty where all was. */
export function saySwingUnmeasured(measures: readonly MetricId[]): string {
  return measures.length === 0 ? '' : `Not measured: ${listed(names(measures))}.`;
}

function names(measures: readonly MetricId[]): readonly string[] {
  return measures.map((id) => metrics[id].name);
}
