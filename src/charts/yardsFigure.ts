import type { PairYards } from '../findings/findings.ts';
import type { MetricFindings } from '../findings/findings.ts';
import type { Part } from '../flight/attribution.ts';
import { printAt, stepFor } from '../prose/numbers.ts';
import { toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import { noAccount, partName, partWords, yardsInShort } from '../prose/yardsSentences.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised } from '../prose/words.ts';
import { contenderName } from './contenderName.ts';
import type { Figure } from './figure.ts';
import { gapRow } from './gapRow.ts';
import type { GapRow } from './hittersInput.ts';
import { yardsChart } from './yards.ts';

const id = 'yards';

/** *Where the yards come from*: the surest gap in carry, split over what differed at launch. */
export function yardsFigure(metric: MetricFindings, telling: Telling): Figure {
  const { yards } = telling.findings;
  const question = `Where do the ${unitWord(unitFor('carry', telling.system))} come from?`;
  const absent = (why: string): Figure => ({ kind: 'absent', id, question, why });
  if (metric.id !== 'carry') return absent('Not drawn: it explains gaps in carry only.');
  const [largest] = [...yards].sort((x, y) => Math.abs(gapOf(y, metric)) - Math.abs(gapOf(x, metric)));
  if (largest === undefined)
    return absent(
      'Not drawn: it takes a gap in carry whose cause is not open, one golfer, eight shots with either, and launches that were read.',
    );
  if (largest.attribution.state === 'not-possible') return absent(noAccount(largest.attribution));
  const { attribution } = largest;
  const pair = metric.pairs.find(({ a, b }) => a === largest.a && b === largest.b);
  if (pair === undefined) return absent('Not drawn: there is no gap in carry to explain.');
  // All accounts are of a minus b; a stands at the left end.
  const [a, b] = [telling.nameOf(pair.a), telling.nameOf(pair.b)];
  const row = (name: string, part: Part): GapRow =>
    partRow(name, part, partWords(part, a, b, telling), telling);
  const parts = attribution.parts.map((part) => row(capitalised(partName(part.id)), part));
  const rest = row('Not explained', attribution.unexplained);
  const read = gapRow(
    metric.readBy === 'monitor' ? 'The gap as read' : 'The gap',
    pair,
    pair,
    metric,
    telling,
  );
  // In a list with its parts, which are no sentences.
  const measured = { ...read, words: read.words.replace(/^About/, 'about').replace(/\.$/, '') };
  return yardsChart({
    id,
    question,
    subject: `The gap in carry between ${a} and ${b}, part by part`,
    finding: `${yardsInShort(attribution, a, b, metric.class === 'measured' ? null : metric.readBy, telling)} Estimated by a flight model with ${attribution.sets.length} published sets of coefficients, not measured. Bar: all that would fit.`,
    description: [measured, ...parts, rest]
      .map(({ name, words }) => `${name}: ${words}.`.replace(/\.\.$/, '.'))
      .join(' '),
    table: {
      caption: `Where the gap in carry between ${a} and ${b} comes from`,
      head: ['Part', `What would fit, in ${unitWord(unitFor('carry', telling.system))}`],
      rows: [measured, ...parts, rest].map(({ name, words }) => [name, words]),
    },
    a: contenderName(pair.a, telling),
    b: contenderName(pair.b, telling),
    measured,
    parts,
    rest,
    axis: `${unitWord(unitFor('carry', telling.system))} farther`,
  });
}

function gapOf({ a, b }: PairYards, metric: MetricFindings): number {
  return metric.pairs.find((pair) => pair.a === a && pair.b === b)?.estimate ?? 0;
}

function partRow(name: string, part: Part, words: string, telling: Telling): GapRow {
  const read = (value: number): number => toReader(value, 'carry', telling.system);
  const [low, high] = [read(part.range[0]), read(part.range[1])];
  const step = stepFor(unitFor('carry', telling.system), (high - low) / 2);
  return {
    name,
    estimate: part.settled ? read(part.value) : null,
    interval: { low, high },
    figure: part.settled ? printAt(Math.abs(read(part.value)), step) : '',
    words,
  };
}
