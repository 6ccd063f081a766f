import type { SwingFindings, SwingPair } from '../findings/findings.ts';
import {
  deliveryWords,
  noSwingColumns,
  swingFinding,
  swingRowAnswers,
  swingRowName,
} from '../prose/english/charts/delivery.ts';
import { barNumbers } from '../prose/english/charts/ranges.ts';
import { saySwingAnswer, saySwingNumbers } from '../prose/english/swing.ts';
import { printingOf, type Printing } from '../prose/printSteps.ts';
import { shortUnit, toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import { swingRow, swingSummary } from '../prose/swing.ts';
import type { Telling } from '../prose/telling.ts';
import { modelPrinting } from '../prose/unjudgedPrinting.ts';
import { capitalised } from '../prose/words.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import type { Shown } from './chart.ts';
import { drawnSize, sizeColumn, wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import { drawDelivery, type DeliveryRow } from './deliveryDrawing.ts';
import { absentChart, type MadeChart } from './madeChart.ts';

/** *Was it the same swing?*: each measure of the swing between each two contenders, as what it could be worth. */
export function makeDelivery({ telling }: Shown): MadeChart {
  const { findings } = telling;
  const { swing } = findings;
  const about = { of: 'report' } as const;
  const priced = findings.metrics.find(({ id }) => id === swing?.metric);
  if (swing === null || priced === undefined) return absentChart({ about }, noSwingColumns);
  const margin = toReader(swing.margin, swing.metric, telling.system);
  const printing = modelPrinting(printingOf(priced, telling));
  const rows = swing.measures.flatMap(({ id, pairs }) =>
    pairs.map((pair) => rowOf({ measure: id, pair }, swing, printing, telling)),
  );
  const { tableCaption, tableHead, ...words } = deliveryWords(
    swing,
    margin,
    rows.flatMap(({ names }) => (names === null ? [] : [names])),
    telling,
  );
  return drawDelivery({
    about,
    ...words,
    finding: swingFinding(swingSummary(swing)),
    description: rows.map(({ sentence, numbers }) => `${sentence} ${numbers}`).join(' '),
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: rows.map(({ heading, numbers, sentence }) => [heading, numbers, sentence]),
    },
    rows: rows.map(({ drawn }) => drawn),
    margin,
    unit: unitWord(unitFor(swing.metric, telling.system)),
  });
}

/** A difference of the swing as it is drawn and as it is told. */
interface ToldRow {
  readonly drawn: DeliveryRow;
  /** Both names, first the one that it would favour; null where that is not known. */
  readonly names: readonly [string, string] | null;
  readonly heading: string;
  readonly sentence: string;
  readonly numbers: string;
}

function rowOf(
  { measure, pair }: { readonly measure: MetricId; readonly pair: SwingPair },
  swing: SwingFindings,
  printing: Printing,
  telling: Telling,
): ToldRow {
  const told = swingRow(measure, pair, swing);
  const name = capitalised(metrics[measure].name);
  const heading = swingRowName(name, telling.nameOf(pair.a), telling.nameOf(pair.b));
  const words = {
    heading,
    sentence: saySwingAnswer(told, telling),
    numbers: saySwingNumbers(told, telling),
  };
  const { answer, worth, across } = pair;
  if (worth === null || answer === 'not-known')
    return {
      ...words,
      names: null,
      drawn: {
        kind: 'not-judged',
        measure: name,
        sentence: `${words.sentence} ${words.numbers}`,
      },
    };
  const read = (value: number): number => toReader(value, swing.metric, telling.system);
  // The one that it would favour is named first, as in the lead chart.
  const flip = worth.estimate < 0;
  const [estimate, ci] = flip
    ? [-worth.estimate, [-worth.ci[1], -worth.ci[0]] as const]
    : [worth.estimate, worth.ci];
  const [first, second] = flip ? [pair.b, pair.a] : [pair.a, pair.b];
  return {
    ...words,
    names: [telling.nameOf(first), telling.nameOf(second)],
    drawn: {
      kind: 'judged',
      measure: name,
      name: swingRowName(name, telling.nameOf(first), telling.nameOf(second)),
      answer: swingRowAnswers[answer],
      ...{ estimate: read(estimate), low: read(ci[0]), high: read(ci[1]) },
      open: false,
      printed: barNumbers(estimate, ci, printing),
      acrossToo: across !== null,
      judgement: answer,
    },
  };
}

/** Each difference of the swing, and what it could be worth, both counted towards the first. */
export function deliveryNumbers({ telling }: Shown): ChartNumbers {
  const { swing } = telling.findings;
  if (swing === null) return { columns: [], rows: [] };
  const { system } = telling;
  const worthIn = (name: string, words: string) => sizeColumn(name, swing.metric, system, words);
  return {
    columns: [
      wordsColumn('Measure', 'The measure of the swing.'),
      wordsColumn('Unit', 'Of the difference; empty for a ratio.'),
      wordsColumn('First', 'Differences are counted towards this one.'),
      wordsColumn('Second', 'What it is compared with.'),
      ...(['Difference', 'Difference from', 'Difference to'] as const).map((name) => ({
        ...wordsColumn(
          name,
          'In the unit of the row: best estimate, and where its likely range begins and ends.',
        ),
        type: 'number' as const,
      })),
      worthIn('Worth', `What it could be worth in ${metrics[swing.metric].name}.`),
      worthIn('Worth from', 'Where the range of that begins.'),
      worthIn('Worth to', 'Where the range of that ends.'),
      wordsColumn('Answer', 'Whether the swing was the same.'),
    ],
    rows: swing.measures.flatMap(({ id, pairs }) =>
      pairs.map(({ a, b, estimate, ci, worth, answer }) => [
        metrics[id].name,
        shortUnit(unitFor(id, system)),
        telling.nameOf(a),
        telling.nameOf(b),
        ...[estimate, ...ci].map((value) => drawnSize(value, id, system)),
        ...[worth?.estimate, worth?.ci[0], worth?.ci[1]].map((value) =>
          drawnSize(value, swing.metric, system),
        ),
        answer === 'not-known' ? 'Not known' : swingRowAnswers[answer],
      ]),
    ),
  };
}
