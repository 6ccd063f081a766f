import type { SwingFindings, SwingPair } from '../findings/findings.ts';
import { deliveryWords } from '../prose/english/charts/delivery.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { barNumbers } from '../prose/english/charts/ranges.ts';
import { saySwingAnswer, saySwingNumbers } from '../prose/english/swing.ts';
import { printingOf, type Printing } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import { swingRow } from '../prose/swing.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised } from '../prose/words.ts';
import { modelPrinting } from '../prose/unjudgedPrinting.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { contenderName } from './contenderName.ts';
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
  const { tableCaption, tableHead, ...words } = deliveryWords(swing, margin, telling);
  return deliveryChart({
    ...head,
    ...words,
    description: rows.map(({ sentence, numbers }) => `${sentence} ${numbers}`).join(' '),
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: rows.map(({ measure, a, b, numbers, sentence }) => [
        `${measure}: ${a.label} and ${b.label}`,
        numbers,
        sentence,
      ]),
    },
    rows,
    margin,
  });
}

function rowOf(
  measure: MetricId,
  pair: SwingPair,
  swing: SwingFindings,
  printing: Printing,
  telling: Telling,
): DeliveryRow {
  const read = (value: number): number => toReader(value, swing.metric, telling.system);
  const [a, b] = [contenderName(pair.a, telling), contenderName(pair.b, telling)];
  const told = swingRow(measure, pair, swing);
  const words = {
    measure: capitalised(metrics[measure].name),
    a,
    b,
    sentence: saySwingAnswer(told, telling),
    numbers: saySwingNumbers(told, telling),
  };
  const { answer, worth, across } = pair;
  if (worth === null || answer === 'not-known') return { kind: 'not-judged', ...words };
  const { estimate, ci } = worth;
  return {
    kind: 'judged',
    ...words,
    ...{ estimate: read(estimate), low: read(ci[0]), high: read(ci[1]) },
    printed: barNumbers(estimate, ci, printing),
    acrossToo: across !== null,
    answer,
  };
}
