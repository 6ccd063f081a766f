import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { answerOf } from '../prose/answers.ts';
import { sayBesideBar } from '../prose/english/answerWords.ts';
import { sayPairInFull } from '../prose/english/pairInWords.ts';
import { apartWords, printedP, sayAnswerFinding } from '../prose/english/charts/apart.ts';
import { gapEnds, gapFoot, keyWords, pairName } from '../prose/english/charts/gaps.ts';
import { barNumbers, differenceCells } from '../prose/english/charts/ranges.ts';
import { pairAnswer, surestFirst } from '../prose/pairAnswer.ts';
import { printingOf } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { apartChart } from './apart.ts';
import type { ApartPair } from './apartInput.ts';
import { apartPairs } from './apartPairs.ts';
import { bandOf } from './bandOf.ts';
import { figureHead, type Figure } from './figure.ts';
import { turnedPair } from './turnedPair.ts';

/** *How far apart?*: every pair of one metric with its difference, likely range and answer. */
export function apartFigure(metric: MetricFindings, telling: Telling): Figure {
  const { findings } = telling;
  const { more, ahead, ...band } = bandOf(metric, telling);
  const { judgedTogether: judged } = metric;
  const { tableCaption, tableHead, ...words } = apartWords(metric, more, judged, telling);
  const drawn = apartPairs(metric);
  const rows = surestFirst(metric).map((pair) => ({ pair, ...pairRow(pair, metric, telling) }));
  return apartChart({
    ...figureHead('apart', { of: 'metric', metric: metric.id }, findings),
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
