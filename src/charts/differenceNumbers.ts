import type { Interval, MetricFindings, PairFindings } from '../findings/findings.ts';
import { sayBesideBar } from '../prose/english/answerWords.ts';
import { pairAnswer } from '../prose/pairAnswer.ts';
import type { Telling } from '../prose/telling.ts';
import { drawnSize, sizeColumn, wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import { turnedPair } from './turnedPair.ts';

/** A difference of a pair, found as `a` minus `b`; SI. */
export interface FoundDifference {
  readonly estimate: number | null;
  readonly ci: Interval | null;
}

/** Columns, and what a pair has in them. */
interface PairColumns {
  readonly columns: ChartNumbers['columns'];
  readonly cells: (pair: PairFindings) => ChartNumbers['rows'][number];
}

/** What tables of differences are made of. */
export function differenceNumbers(metric: MetricFindings, telling: Telling) {
  const names = {
    columns: [
      wordsColumn('First', 'Differences are counted towards this one.'),
      wordsColumn('Second', 'What it is compared with.'),
    ],
    cells: (pair: PairFindings): readonly [string, string] => {
      const { a, b } = turnedPair(pair, metric, telling);
      return [a.label, b.label];
    },
  };
  const size = (name: string, description: string) =>
    sizeColumn(name, metric.id, telling.system, description);
  /** Best estimate and likely range, counted towards the first-named one. */
  const sizes = {
    /** @param of ends the name of each column */
    columns: (of = '') => [
      size(`Best estimate${of}`, 'Best estimate of the difference in the average.'),
      size(`From${of}`, 'Where its likely range begins.'),
      size(`To${of}`, 'Where its likely range ends.'),
    ],
    /** All empty where nothing was found. */
    cells: (found: FoundDifference | null, pair: PairFindings): readonly (number | null)[] => {
      const { estimate, ci } = found ?? { estimate: null, ci: null };
      const turned = turnedPair(pair, metric, telling);
      const [low, high] = ci === null ? [null, null] : turned.ci(ci);
      return [estimate === null ? null : turned.estimate(estimate), low, high].map((value) =>
        drawnSize(value, metric.id, telling.system),
      );
    },
  };
  const answer: PairColumns = {
    columns: [wordsColumn('Answer', 'What the test says of the pair.')],
    cells: (pair) => [sayBesideBar(pairAnswer(pair, metric, telling.findings.design))],
  };
  /** A row for each of these pairs: their names, what is told of them, the answer. */
  const ofPairs = (pairs: readonly PairFindings[], told: readonly PairColumns[]): ChartNumbers => {
    const all = [names, ...told, answer];
    return {
      columns: all.flatMap(({ columns }) => columns),
      rows: pairs.map((pair) => all.flatMap(({ cells }) => cells(pair))),
    };
  };
  return { names, sizes, ofPairs };
}
