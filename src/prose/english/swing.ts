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
export function saySwingAnswer({ measure, a, b, answer }: SwingRow, telling: Telling): string {
  const { name } = metrics[measure];
  const both = `${telling.the(a)} and ${telling.the(b)}`;
  switch (answer) {
    case 'same':
      return `${capitalised(name)} was the same with ${both}, as far as it matters.`;
    case 'different':
      return `${capitalised(name)} was not the same with ${both}.`;
    case 'cannot-tell':
      return `We cannot tell whether ${name} was the same with ${both}.`;
  }
}

const answerWords: Readonly<Record<Exclude<SwingRow['answer'], 'cannot-tell'>, string>> = {
  same: 'the same swing, as far as it matters',
  different: 'not the same swing',
};

/** "Within 0.8 mph of each other, worth up to 2 yards either way." */
export function saySwingNumbers(row: SwingRow, telling: Telling): string {
  return `${capitalised(numbers(row, telling))}.`;
}

/** "Club speed, Heron and Plover: within 0.8 mph of each other, worth up to 2 yards either way." */
export function saySwing(row: SwingRow, telling: Telling): string {
  const answer = row.answer === 'cannot-tell' ? '' : `${answerWords[row.answer]}, `;
  return `${subject(row, telling)}: ${answer}${numbers(row, telling)}.`;
}

function subject({ measure, a, b }: SwingRow, telling: Telling): string {
  return `${capitalised(metrics[measure].name)}, ${telling.the(a)} and ${telling.the(b)}`;
}

function numbers({ measure, a, b, difference, worth, even }: SwingRow, telling: Telling): string {
  const printing = unjudgedPrinting(printingFor(measure, telling));
  const priced = modelPrinting(printingFor(worth.metric, telling));
  const differed = even.difference
    ? `within ${widest(difference, printing)} of each other`
    : sided(difference, [a, b], measure, printing, telling);
  const costs = even.worth
    ? `worth up to ${widest(worth, priced)} either way`
    : `worth ${oneSided(worth, [a, b], priced, telling)}`;
  return `${differed}, ${costs}`;
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
function sided(
  { estimate, ci: [low, high] }: Difference,
  [a, b]: Sides,
  measure: MetricId,
  printing: Printing,
  telling: Telling,
): string {
  const { axis } = comparisonOf(measure);
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
