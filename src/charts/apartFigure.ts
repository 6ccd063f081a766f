import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { surestFirst } from '../prose/pairAnswer.ts';
import { apartWords, printedP } from '../prose/english/charts/apart.ts';
import { barNumbers, differenceCells } from '../prose/english/charts/ranges.ts';
import { sayNumbers, sayPairInFull, sayShort } from '../prose/english/answers.ts';
import { pairAnswer } from '../prose/pairAnswer.ts';
import { printingOf } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { sentence } from '../prose/words.ts';
import { apartChart } from './apart.ts';
import type { ApartPair } from './apartInput.ts';
import { bandOf } from './bandOf.ts';
import { figureHead, type Figure } from './figure.ts';
import { turnedPair } from './turnedPair.ts';

/** *How far apart?*: every pair of one metric with its difference, likely range and answer. */
export function apartFigure(metric: MetricFindings, telling: Telling): Figure {
  const { matters, axis, legend, more } = bandOf(metric, telling);
  const { judgedTogether: judged } = metric;
  const { tableCaption, tableHead, ...words } = apartWords(metric, more, judged, telling);
  const rows = metric.pairs.map((pair) => pairRow(pair, metric, telling));
  const told = surestFirst(metric).map((pair) => rows[metric.pairs.indexOf(pair)]?.told ?? '');
  return apartChart({
    ...figureHead('apart', { of: 'metric', metric: metric.id }, telling.findings),
    ...words,
    description: [...new Set(told)].join(' '),
    table: { caption: tableCaption, head: tableHead, rows: rows.map(({ cells }) => cells) },
    pairs: rows.map(({ drawn }) => drawn),
    matters,
    axis,
    legend,
  });
}

/** A pair as its row is drawn, as the table has it, and in sentences. */
function pairRow(
  pair: PairFindings,
  metric: MetricFindings,
  telling: Telling,
): { readonly drawn: ApartPair; readonly cells: readonly string[]; readonly told: string } {
  const turned = turnedPair(pair, metric, telling);
  const { a, b } = turned;
  const made = pairAnswer(pair, metric, telling.findings.design);
  const told = sayPairInFull(made, telling);
  const answer = made.status === 'not-judged' ? told : sayShort(made);
  const heading = `${a.label} and ${b.label}`;
  if (pair.estimate === null || pair.ci === null || pair.p === null) {
    return {
      drawn: { kind: 'not-judged', a, b, sentence: answer, numbers: '' },
      cells: [heading, '–', '–', '–', '–', answer],
      told,
    };
  }
  const read = (value: number): number => toReader(value, metric.id, telling.system);
  const printing = printingOf(metric, telling);
  const [estimate, ci] = [turned.estimate(pair.estimate), turned.ci(pair.ci)];
  const numbers = sayNumbers(made, telling);
  return {
    drawn: {
      kind: 'judged',
      ...{ a, b, sentence: answer, numbers: sentence(numbers) },
      ...{ estimate: read(estimate), low: read(ci[0]), high: read(ci[1]) },
      printed: barNumbers(estimate, ci, printing),
    },
    cells: [heading, ...differenceCells(estimate, ci, printing), printedP(pair.p), answer],
    told,
  };
}
