import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { answerOf } from '../prose/answers.ts';
import { sayBesideBar } from '../prose/english/answerWords.ts';
import { apartWords, noPairJudged, printedP, sayAnswerFinding } from '../prose/english/charts/apart.ts';
import { gapEnds, gapFoot, keyWords, pairName } from '../prose/english/charts/gaps.ts';
import { barNumbers, differenceCells } from '../prose/english/charts/ranges.ts';
import { sayPairInFull } from '../prose/english/pairInWords.ts';
import { pairAnswer, surestFirst } from '../prose/pairAnswer.ts';
import { printingOf } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { apartPairs } from './apartPairs.ts';
import type { ApartPair } from './apartRow.ts';
import { apartRows } from './apartRows.ts';
import { bandOf } from './bandOf.ts';
import type { Shown } from './chart.ts';
import { sixDigits, type ChartNumbers } from './chartNumbers.ts';
import { differenceNumbers } from './differenceNumbers.ts';
import type { GapWords } from './gapWords.ts';
import { absentChart, drawnChart, type ChartWords, type MadeChart } from './madeChart.ts';
import { turnedPair } from './turnedPair.ts';

/** *How far apart?*: every pair of one metric with its difference, likely range and answer. */
export function makeApart({ metric, telling }: Shown): MadeChart {
  const { findings } = telling;
  const { more, ahead, ...band } = bandOf(metric, telling);
  const { judgedTogether: judged } = metric;
  const { tableCaption, tableHead, ...words } = apartWords(metric, more, judged, telling);
  const drawn = apartPairs(metric);
  const rows = surestFirst(metric).map((pair) => ({ pair, ...pairRow(pair, metric, telling) }));
  return drawApart({
    about: { of: 'metric', metric: metric.id },
    ...words,
    finding: sayAnswerFinding(answerOf(metric, findings), telling),
    description: [...new Set(rows.map(({ told }) => told))].join(' '),
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: metric.pairs.flatMap((pair) => rows.filter((row) => row.pair === pair).map(({ cells }) => cells)),
    },
    pairs: rows.filter(({ pair }) => drawn.includes(pair)).map((row) => row.drawn),
    recorded: rows.length,
    ...band,
    ends: gapEnds(
      rows.flatMap(({ pair, drawn: { kind }, names }) =>
        kind === 'judged' && drawn.includes(pair) ? [names] : [],
      ),
      ahead,
    ),
    foot: gapFoot(metric.id, metric.pairs[0]?.level ?? 0.95, judged),
    key: keyWords(drawn, metric.matters, telling),
  });
}

/** A pair as its row is drawn, as the table has it, and in sentences. */
function pairRow(
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): {
  readonly drawn: ApartPair;
  readonly names: readonly [string, string];
  readonly cells: readonly string[];
  readonly told: string;
} {
  const turned = turnedPair(pair, metric, telling);
  const { a, b } = turned;
  const made = pairAnswer(pair, metric, telling.findings.design);
  const told = sayPairInFull(made, telling);
  const answer = made.status === 'not-judged' ? told : sayBesideBar(made);
  const heading = `${a.label} and ${b.label}`;
  if (pair.estimate === null || pair.ci === null || pair.p === null) {
    return {
      drawn: { kind: 'not-judged', sentence: answer },
      names: [a.label, b.label],
      cells: [heading, '–', '–', '–', '–', answer],
      told,
    };
  }
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const printing = printingOf(metric, telling);
  const [estimate, ci] = [turned.estimate(pair.estimate), turned.ci(pair.ci)];
  return {
    drawn: {
      kind: 'judged',
      name: pairName(a.label, b.label, pair.status),
      answer,
      ...{ estimate: read(estimate), low: read(ci[0]), high: read(ci[1]) },
      open: pair.openBecause !== null,
      printed: barNumbers(estimate, ci, printing),
    },
    names: [a.label, b.label],
    cells: [heading, ...differenceCells(estimate, ci, printing), printedP(pair.p), answer],
    told,
  };
}

/** Every pair of the measure. */
export function apartNumbers({ metric, telling }: Shown): ChartNumbers {
  const { sizes, ofPairs } = differenceNumbers(metric, telling);
  const description = 'Two-sided; allows for all pairs judged together.';
  return ofPairs(metric.pairs, [
    { columns: sizes.columns(), cells: (pair) => sizes.cells(pair, pair) },
    {
      columns: [{ name: 'p', type: 'number', unit: null, description }],
      cells: ({ p }) => [p === null ? null : sixDigits(p)],
    },
  ]);
}

export interface ApartInput extends ChartWords, GapWords {
  /** In the order of the answer, the surest first. */
  readonly pairs: readonly ApartPair[];
  /** Pairs that there are, those that only the table has among them. */
  readonly recorded: number;
}

/**
 * One row a pair, the one ahead named first and to the right. Absent if no pair was judged. Throws on gaps that are not numbers in
 * order, on a table without all pairs.
 */
export function drawApart(input: ApartInput): MadeChart {
  refuse(input);
  const { pairs, recorded } = input;
  if (!pairs.some(({ kind }) => kind === 'judged')) return absentChart(input, noPairJudged);
  // One that was not judged says so in each of its pairs, in one sentence, which stands once.
  const shown = pairs.filter(
    (pair, index) =>
      pair.kind === 'judged' ||
      pairs.findIndex((other) => other.kind === 'not-judged' && other.sentence === pair.sentence) === index,
  );
  return drawnChart(input, { drawn: pairs.length, recorded, counted: 'pairs' }, (layout) =>
    apartRows({ ...input, pairs: shown }, layout),
  );
}

function refuse({ matters, pairs, recorded, table }: ApartInput): void {
  if (!(matters >= 0 && Number.isFinite(matters))) {
    throw new Error(`The gap that matters is ${matters}; it must be 0 or more.`);
  }
  for (const pair of pairs) {
    if (pair.kind === 'not-judged') continue;
    const { name, low, estimate, high } = pair;
    if (![low, estimate, high].every(Number.isFinite) || low > estimate || estimate > high) {
      throw new Error(
        `${name}: low ${low}, estimate ${estimate} and high ${high} must be numbers in rising order.`,
      );
    }
  }
  if (table.rows.length < recorded || recorded < pairs.length) {
    throw new Error(
      `The table has ${table.rows.length} rows for ${Math.max(recorded, pairs.length)} pairs; it must hold all of them.`,
    );
  }
}
