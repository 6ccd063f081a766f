import type { Hold, Interval, MetricFindings, PairFindings } from '../findings/findings.ts';
import { surestFirst } from './answer.ts';
import { withAndWithout } from './exclusionSentences.ts';
import { printAt, printLimit, printStated } from './numbers.ts';
import { toReader, withUnit } from './readerUnits.ts';
import { equalSpeedSentence } from './swingSentences.ts';
import { toldGap, type Telling } from './telling.ts';
import { countWord, listed } from './words.ts';

/** One pair with what happens to its answer when it is worked out otherwise. */
export interface ChangeLines {
  readonly pair: string;
  readonly lines: readonly string[];
}

const checkWords: Readonly<Record<Hold['check'], string>> = {
  'usual-strikes': 'when the wildest shots are set aside',
  'by-rounds': 'when counted by turns',
  'drift-taken-out': 'when drift is taken out',
};

/** Every judged pair of a metric, with one line a check. */
export function wouldChange(metric: MetricFindings, telling: Telling): readonly ChangeLines[] {
  return surestFirst(metric).flatMap((pair) => {
    const lines = [
      ...holdLine(pair),
      ...leaveOneOutLine(pair, metric, telling),
      ...leftOutLine(pair, metric, telling),
      ...deviceLine(pair, metric, telling),
      ...equalSpeedLine(pair, metric, telling),
    ];
    return lines.length === 0
      ? []
      : [{ pair: `${telling.nameOf(pair.a)} and ${telling.nameOf(pair.b)}`, lines }];
  });
}

function holdLine({ holds }: PairFindings): readonly string[] {
  if (holds.length === 0) return [];
  const failed = holds.filter(({ state }) => state === 'fails');
  const words = (of: readonly Hold[], joiner: string): string =>
    listed(
      of.map(({ check }) => checkWords[check]),
      joiner,
    );
  const ways = `${countWord(holds.length)} other ${holds.length === 1 ? 'way' : 'ways'}`;
  if (failed.length === 0) return [`The answer holds in ${ways}: ${words(holds, 'and')}.`];
  if (failed.length === holds.length) return [`The answer does not hold ${words(holds, 'or')}.`];
  const held = countWord(holds.length - failed.length);
  return [`The answer holds in ${held} of ${ways}; not ${words(failed, 'or')}.`];
}

function leaveOneOutLine(pair: PairFindings, metric: MetricFindings, telling: Telling): readonly string[] {
  const gap = toldGap(pair, metric, telling);
  if (pair.leaveOneOut === null || gap === null) return [];
  const { low, high } = told(pair.leaveOneOut, pair, metric, telling);
  const printed = (value: number): string => printAt(Math.abs(value), gap.step);
  const upper = withUnit(printed(high), gap.unit);
  const between =
    low < 0 && printed(low) !== '0'
      ? `between ${withUnit(printed(low), gap.unit)} the other way and ${upper}`
      : printed(low) === printed(high)
        ? `at about ${upper}`
        : `between ${printed(low)} and ${upper}`;
  const rests = pair.overlays.includes('rests-on-one-shot')
    ? ' One shot far from the others decides: without it these shots cannot tell.'
    : '';
  return [`Leaving out any one shot, the gap stays ${between}.${rests}`];
}

function leftOutLine(pair: PairFindings, metric: MetricFindings, telling: Telling): readonly string[] {
  const line = withAndWithout(pair, metric, telling);
  return line === null ? [] : [line];
}

function deviceLine(pair: PairFindings, metric: MetricFindings, telling: Telling): readonly string[] {
  const gap = toldGap(pair, metric, telling);
  if (pair.device === null || gap === null) return [];
  const accuracy = toReader(pair.device.accuracy, metric.id, telling.system);
  const { low, high } = told(pair.device.ci, pair, metric, telling);
  const thresholds = [0, gap.matters, -gap.matters];
  const print = (value: number): string => printLimit(value, gap.step, gap.unit, thresholds).replace('−', '');
  const from = low < 0 ? `${withUnit(print(low), gap.unit)} the other way` : print(low);
  return [
    `The monitor is stated to read within ${withUnit(printStated(accuracy), gap.unit)}. If that error differs from one ${telling.noun} to another, gaps from ${from} to ${withUnit(print(high), gap.unit)} would fit.`,
  ];
}

/** An interval counted the way the gap is told, in the reader's unit. */
function told(
  interval: Interval,
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): { readonly low: number; readonly high: number } {
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const [low, high] = interval;
  return (pair.estimate ?? 0) >= 0
    ? { low: read(low), high: read(high) }
    : { low: read(-high), high: read(-low) };
}

function equalSpeedLine(pair: PairFindings, metric: MetricFindings, telling: Telling): readonly string[] {
  if (pair.atEqualSpeed === null || pair.estimate === null) return [];
  return [equalSpeedSentence(pair.atEqualSpeed, pair.estimate >= 0 ? 1 : -1, metric.id, telling)];
}
