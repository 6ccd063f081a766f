import type { SwingFindings, SwingPair } from '../findings/findings.ts';
import {
  deliveryWords,
  swingFinding,
  swingRowAnswers,
  swingRowName,
} from '../prose/english/charts/delivery.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { barNumbers } from '../prose/english/charts/ranges.ts';
import { saySwingAnswer, saySwingNumbers } from '../prose/english/swing.ts';
import { printingOf, type Printing } from '../prose/printSteps.ts';
import { toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import { swingRow, swingSummary } from '../prose/swing.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised } from '../prose/words.ts';
import { modelPrinting } from '../prose/unjudgedPrinting.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { deliveryChart } from './delivery.ts';
import type { DeliveryRow } from './deliveryInput.ts';
import { absentFigure, figureHead, type Figure } from './figure.ts';

/** *Delivery check*: each measure of the swing between each two contenders, as what it could be worth. */
export function deliveryFigure(telling: Telling): Figure {
  const { findings } = telling;
  const { swing } = findings;
  const head = figureHead('delivery', { of: 'report' }, findings);
  const priced = findings.metrics.find(({ id }) => id === swing?.metric);
  if (swing === null || priced === undefined) return absentFigure(head, notDrawn.noSwingColumns);
  const margin = toReader(swing.margin, swing.metric, telling.system);
  const printing = modelPrinting(printingOf(priced, telling));
  const rows = swing.measures.flatMap(({ id, pairs }) =>
    pairs.map((pair) => rowOf(id, pair, swing, printing, telling)),
  );
  const { tableCaption, tableHead, ...words } = deliveryWords(
    swing,
    margin,
    rows.flatMap(({ names }) => (names === null ? [] : [names])),
    telling,
  );
  return deliveryChart({
    ...head,
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
  measure: MetricId,
  pair: SwingPair,
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
