import type { Interval, MetricFindings, PairFindings } from '../findings/findings.ts';
import { sayBesideBar } from '../prose/english/answerWords.ts';
import { pairAnswer } from '../prose/pairAnswer.ts';
import type { Telling } from '../prose/telling.ts';
import { drawnSize, sizeColumn, wordsColumn } from './chartNumbers.ts';
import { turnedPair } from './turnedPair.ts';

/** A difference of a pair, found as `a` minus `b`; SI. */
export interface FoundDifference {
  readonly estimate: number | null;
  readonly ci: Interval | null;
}

export const nameColumns = [
  wordsColumn('First', 'Differences are counted towards this one.'),
  wordsColumn('Second', 'What it is compared with.'),
];

/** The cells of `nameColumns`. */
export function nameCells(
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): readonly [string, string] {
  const { a, b } = turnedPair(pair, metric, telling);
  return [a.label, b.label];
}

/** Best estimate of a difference and its likely range; `of` ends the name of each column. */
export const differenceColumns = ({ id }: MetricFindings, { system }: Telling, of = '') => [
  sizeColumn(`Best estimate${of}`, id, system, 'Best estimate of the difference in the average.'),
  sizeColumn(`From${of}`, id, system, 'Where its likely range begins.'),
  sizeColumn(`To${of}`, id, system, 'Where its likely range ends.'),
];

/** The cells of `differenceColumns`, counted towards the first-named one. */
export function differenceSizes(
  { estimate, ci }: FoundDifference,
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): readonly (number | null)[] {
  const turned = turnedPair(pair, metric, telling);
  const [low, high] = ci === null ? [null, null] : turned.ci(ci);
  return [estimate === null ? null : turned.estimate(estimate), low, high].map((value) =>
    drawnSize(value, metric.id, telling.system),
  );
}

export const answerColumn = wordsColumn('Answer', 'What the test says of the pair.');

/** The cell of `answerColumn`. */
export const answerCell = (pair: PairFindings, metric: MetricFindings, { findings }: Telling): string =>
  sayBesideBar(pairAnswer(pair, metric, findings.design));
