import type { MetricFindings } from '../../findings/findings.ts';
import type { Session } from '../../intake/session.ts';
import { metrics } from '../../trade/metrics.ts';
import { pairAnswers } from '../pairAnswer.ts';
import { printReading } from '../printSteps.ts';
import { shortUnit, unitFor } from '../readerUnits.ts';
import { printingFor, type Telling } from '../telling.ts';
import { capitalised, countWord } from '../words.ts';
import { sayShort } from './answerWords.ts';
import { sayPair } from './pairInWords.ts';
import { printedP } from './charts/apart.ts';
import { differenceCells, differenceHeads, inBrackets } from './charts/ranges.ts';
import { comparisonOf } from './comparisons.ts';

/** A table of numbers and words, as pages show it. */
export interface NumbersTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** What stands where there is no number. */
const none = '–';

/** Every pair of a measure, main or not, with p and the level that it is held against; the surest first. */
export function differenceTable(metric: MetricFindings, telling: Telling): NumbersTable {
  const { id, better, judgedTogether: together } = metric;
  const inUnit = inBrackets(shortUnit(unitFor(id, telling.system)));
  const level = metric.pairs[0]?.level ?? 0.95;
  const { axis } = comparisonOf(id);
  const held = `p is held against ${Number((1 - level).toFixed(3))}${together > 1 ? ` and allows for all ${countWord(together)} pairs` : ''}.`;
  const printing = printingFor(id, telling);
  return {
    caption: `Differences in average ${metrics[id].name}${inUnit}. Positive: the first-named ${axis[better === 'less' ? 'less' : 'more']}. ${held}`,
    head: ['Pair', ...differenceHeads(inUnit), 'p', 'Answer'],
    rows: pairAnswers(metric, telling.findings.design).map((answer) => {
      const { ahead, behind, difference, about } = answer;
      const pair = `${telling.nameOf(ahead)} and ${telling.nameOf(behind)}`;
      const p = metric.pairs.find(({ a, b }) => a === about.a && b === about.b)?.p ?? null;
      return difference === null
        ? [pair, none, none, none, none, sayPair(answer, telling)]
        : [
            pair,
            ...differenceCells(difference.estimate, difference.ci, printing),
            p === null ? none : printedP(p),
            sayShort(answer),
          ];
    }),
  };
}

/** Every shot with every reading, in the order it was hit. */
export function everyShot({ shots }: Pick<Session, 'shots'>, telling: Telling): NumbersTable {
  const { findings, system, noun, golfer } = telling;
  const several = findings.design.hitters > 1;
  const columns = findings.metrics.map(({ id }) => ({ id, printing: printingFor(id, telling) }));
  return {
    caption: 'Every shot in the order it was hit',
    head: [
      'Shot',
      ...(several ? ['Golfer'] : []),
      capitalised(noun),
      ...columns.map(({ id }) =>
        capitalised(`${metrics[id].name}${inBrackets(shortUnit(unitFor(id, system)))}`),
      ),
      'Left out',
    ],
    rows: shots.map(({ order, hitter, contender, values, excluded }) => [
      String(order),
      ...(several ? [golfer(hitter, system)] : []),
      telling.nameOf(contender),
      ...columns.map(({ id, printing }) => {
        const value = values[id];
        return typeof value === 'number' ? printReading(value, printing) : none;
      }),
      excluded === null ? 'no' : `${excluded.rule}: ${excluded.reason}`,
    ]),
  };
}
