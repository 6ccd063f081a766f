import type { MetricFindings } from '../findings/findings.ts';
import { surestFirst } from '../prose/answer.ts';
import { comparativeOf } from '../prose/comparatives.ts';
import { onlyThese } from '../prose/hitterSentences.ts';
import { mattersText } from '../prose/pairSentence.ts';
import { toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised, countWord } from '../prose/words.ts';
import { contenderName } from './contenderName.ts';
import type { Figure } from './figure.ts';
import { gapRow } from './gapRow.ts';
import { hittersChart } from './hitters.ts';

const id = 'hitters';
const question = 'Who gained?';

/** *Many hitters*: each golfer's own gap of the surest pair, all together, and what another golfer might see. */
export function hittersFigure(metric: MetricFindings, telling: Telling): Figure {
  const pair = surestFirst(metric).find(({ byHitter }) => byHitter.length > 1);
  if (pair === undefined)
    return { kind: 'absent', id, question, why: 'Not drawn: it takes more than one golfer.' };
  const unit = unitFor(metric.id, telling.system);
  const matters = toReader(metric.matters, metric.id, telling.system);
  const [a, b] = [telling.nameOf(pair.a), telling.nameOf(pair.b)];
  const hitters = pair.byHitter.map((own) => gapRow(`Golfer ${own.hitter}`, own, pair, metric, telling));
  const all = pair.byHitter.length === 2 ? 'Both' : `All ${countWord(pair.byHitter.length)}`;
  const pooled = pair.ci === null ? null : gapRow(all, pair, pair, metric, telling);
  // The range says where another golfer's own gap would lie; it has no estimate of its own.
  const another =
    pair.newHitter === null
      ? null
      : {
          ...gapRow('Another golfer', { estimate: pair.estimate, ci: pair.newHitter }, pair, metric, telling),
          estimate: null,
          figure: '',
        };
  const rows = [...hitters, ...(pooled === null ? [] : [pooled]), ...(another === null ? [] : [another])];
  return hittersChart({
    id,
    question,
    subject: `Each golfer's own gap between ${a} and ${b}`,
    finding: `One row is one golfer: ${a} at the left end, ${b} at the right. Bar: every gap that would fit, thick where it would matter. ${
      another === null
        ? onlyThese(telling.findings.design.hitters)
        : "The last bar: what another golfer's own test of this length would show."
    }`,
    description: rows.map(({ name, words }) => `${capitalised(name)}: ${words}`).join(' '),
    table: {
      caption: `${a} and ${b}, golfer by golfer`,
      head: ['Golfer', 'Gap that would fit'],
      rows: rows.map(({ name, words }) => [name, words]),
    },
    a: contenderName(pair.a, telling),
    b: contenderName(pair.b, telling),
    hitters,
    pooled,
    another,
    matters,
    axis: `${unitWord(unit)} ${comparativeOf(metric.id).more}`.trim(),
    legend: `Under ${mattersText({ matters, unit })}: too small to matter`,
  });
}
