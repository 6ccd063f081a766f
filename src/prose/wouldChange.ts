import type { Hold, MetricFindings, PairFindings } from '../findings/findings.ts';
import { surestFirst } from './answer.ts';
import { printAt } from './numbers.ts';
import { pairSentence } from './pairSentence.ts';
import { toReader, withUnit } from './readerUnits.ts';
import { toldGap, type Telling } from './telling.ts';
import { countWord, counted, listed } from './words.ts';

/** One pair with what happens to its answer when it is worked out otherwise. */
export interface ChangeLines {
  readonly pair: string;
  readonly lines: readonly string[];
}

const checkWords: Readonly<Record<Hold['check'], string>> = {
  'usual-strikes': 'without the extreme strikes of either side',
  'by-rounds': 'counted by turns',
  'drift-taken-out': 'with a steady drift taken out',
};

/** Every judged pair of a metric, with one line a check. */
export function wouldChange(metric: MetricFindings, telling: Telling): readonly ChangeLines[] {
  return surestFirst(metric).flatMap((pair) => {
    const lines = [
      ...holdLine(pair),
      ...leaveOneOutLine(pair, metric, telling),
      ...leftOutLine(pair, metric, telling),
      ...deviceLine(pair, metric, telling),
    ];
    return lines.length === 0
      ? []
      : [{ pair: `${telling.nameOf(pair.a)} and ${telling.nameOf(pair.b)}`, lines }];
  });
}

function holdLine({ holds }: PairFindings): readonly string[] {
  if (holds.length === 0) return [];
  const failed = holds.filter(({ state }) => state === 'fails');
  const ways = `${countWord(holds.length)} other ${holds.length === 1 ? 'way' : 'ways'}`;
  if (failed.length === 0)
    return [
      `The answer holds when worked out in ${ways}: ${listed(holds.map(({ check }) => checkWords[check]))}.`,
    ];
  const held = countWord(holds.length - failed.length);
  return [
    `It holds in ${held} of ${ways}; not ${listed(
      failed.map(({ check }) => checkWords[check]),
      'or',
    )}.`,
  ];
}

function leaveOneOutLine(pair: PairFindings, metric: MetricFindings, telling: Telling): readonly string[] {
  const gap = toldGap(pair, metric, telling);
  if (pair.leaveOneOut === null || gap === null) return [];
  const flip = (pair.estimate ?? 0) >= 0 ? 1 : -1;
  const [low, high] = [...pair.leaveOneOut]
    .map((value) => toReader(value * flip, metric.id, telling.system))
    .sort((x, y) => x - y);
  if (low === undefined || high === undefined) return [];
  const between = `between ${printAt(low, gap.step)} and ${withUnit(printAt(high, gap.step), gap.unit)}`;
  const rests = pair.overlays.includes('rests-on-one-shot')
    ? ' One shot far from the others decides: without it these shots cannot tell.'
    : '';
  return [`Leaving out any one shot, the gap stays ${between}.${rests}`];
}

function leftOutLine(pair: PairFindings, metric: MetricFindings, telling: Telling): readonly string[] {
  if (pair.withLeftOut === null) return [];
  const all: PairFindings = { ...pair, ...pair.withLeftOut, overlays: [], credit: pair.credit };
  const changed = pair.withLeftOut.verdict !== pair.verdict;
  return [
    changed
      ? `With every shot counted the answer changes: ${pairSentence(all, metric, telling)}`
      : 'With every shot counted, the left-out ones too, the answer stays the same.',
  ];
}

function deviceLine(pair: PairFindings, metric: MetricFindings, telling: Telling): readonly string[] {
  const gap = toldGap(pair, metric, telling);
  if (pair.device === null || gap === null) return [];
  const accuracy = toReader(pair.device.accuracy, metric.id, telling.system);
  const flip = (pair.estimate ?? 0) >= 0 ? 1 : -1;
  const [low, high] = [...pair.device.ci]
    .map((value) => toReader(value * flip, metric.id, telling.system))
    .sort((x, y) => x - y);
  if (low === undefined || high === undefined) return [];
  return [
    `The monitor is stated to read within ${withUnit(printAt(accuracy, gap.step), gap.unit)}; if that error differs from one ${telling.noun} to another, gaps from ${printAt(low, gap.step)} to ${withUnit(printAt(high, gap.step), gap.unit)} would fit.`,
  ];
}

/** What all of these lines are, and are not. */
export function sameShotsSentence(count: number): string {
  return `${counted(count, 'pair')} worked out in other ways. These use the same shots; they are not a second test.`.replace(
    /^./,
    (first) => first.toUpperCase(),
  );
}
