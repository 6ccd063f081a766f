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

/** What tables of differences are made of: columns, and what a pair has in them. */
export const differenceNumbers = (metric: MetricFindings, telling: Telling) => ({
  names: {
    columns: [
      wordsColumn('First', 'Differences are counted towards this one.'),
      wordsColumn('Second', 'What it is compared with.'),
    ],
    cells: (pair: PairFindings): readonly [string, string] => {
      const { a, b } = turnedPair(pair, metric, telling);
      return [a.label, b.label];
    },
  },
  /** Best estimate and likely range, counted towards the first-named one. */
  sizes: {
    /** @param of ends the name of each column */
    columns: (of = '') => {
      const size = (name: string, description: string) =>
        sizeColumn(`${name}${of}`, metric.id, telling.system, description);
      return [
        size('Best estimate', 'Best estimate of the difference in the average.'),
        size('From', 'Where its likely range begins.'),
        size('To', 'Where its likely range ends.'),
      ];
    },
    cells: ({ estimate, ci }: FoundDifference, pair: PairFindings): readonly (number | null)[] => {
      const turned = turnedPair(pair, metric, telling);
      const [low, high] = ci === null ? [null, null] : turned.ci(ci);
      return [estimate === null ? null : turned.estimate(estimate), low, high].map((value) =>
        drawnSize(value, metric.id, telling.system),
      );
    },
  },
  answer: {
    column: wordsColumn('Answer', 'What the test says of the pair.'),
    cell: (pair: PairFindings): string => sayBesideBar(pairAnswer(pair, metric, telling.findings.design)),
  },
});
