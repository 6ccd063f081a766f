import { mattersText } from '../prose/pairSentence.ts';
import { printAt, stepFor } from '../prose/numbers.ts';
import { toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import { swingInShort, swingNumbers, swingSentence, swingUnread } from '../prose/swingSentences.ts';
import type { Telling } from '../prose/telling.ts';
import { metrics } from '../trade/metrics.ts';
import { capitalised } from '../prose/words.ts';
import { contenderName } from './contenderName.ts';
import { deliveryChart } from './delivery.ts';
import type { DeliveryRow } from './deliveryInput.ts';
import type { Figure } from './figure.ts';

const id = 'delivery';
const question = 'Was it the same swing?';

/** *Delivery check*: each measure of the swing between each two contenders, as what it could be worth. */
export function deliveryFigure(telling: Telling): Figure {
  const { swing } = telling.findings;
  if (swing === null) {
    return {
      kind: 'absent',
      id,
      question,
      why: 'Not drawn: it takes one golfer and a column for club speed, path, face or attack.',
    };
  }
  const unit = unitFor(swing.metric, telling.system);
  const read = (value: number): number => toReader(value, swing.metric, telling.system);
  const margin = read(swing.margin);
  const rows = swing.measures.flatMap(({ id: measure, pairs }) =>
    pairs.map((pair): DeliveryRow => {
      const [low, high] = [read(pair.worth.ci[0]), read(pair.worth.ci[1])];
      const estimate = read(pair.worth.estimate);
      const step = stepFor(unit, (high - low) / 2);
      const bare = (value: number): string => printAt(Math.abs(value), step);
      return {
        kind: 'judged',
        measure: capitalised(metrics[measure].name),
        a: contenderName(pair.a, telling),
        b: contenderName(pair.b, telling),
        sentence: swingSentence(measure, pair, telling),
        numbers: swingNumbers(measure, pair, swing, telling),
        estimate,
        low,
        high,
        printed: { estimate: bare(estimate), low: bare(low), high: bare(high) },
        answer: pair.answer,
      };
    }),
  );
  const unread = swingUnread(swing);
  return deliveryChart({
    id,
    question,
    subject: `What differences in the swing could be worth in ${metrics[swing.metric].name}`,
    finding:
      `${swingInShort(swing, telling)} ${unread} Bar: what each measure's difference could be worth, priced by a flight model or rules of the trade.`.replace(
        / +/g,
        ' ',
      ),
    description: rows.map(({ sentence, numbers }) => `${sentence} ${numbers}`).join(' '),
    table: {
      caption: 'Differences in the swing, and what they could be worth',
      head: ['Measure and pair', 'Difference and worth', 'Answer'],
      rows: rows.map(({ measure, a, b, numbers, sentence }) => [
        `${measure}: ${a.label} and ${b.label}`,
        numbers,
        sentence,
      ]),
    },
    rows,
    margin,
    axis: `${unitWord(unit)} it could be worth`,
    legend: `Worth under ${mattersText({ matters: margin, unit })}: the same swing, as far as it matters`,
  });
}
