import type { MetricFindings } from '../findings/findings.ts';
import { pairAnswer, surestFirst } from '../prose/pairAnswer.ts';
import {
  allGolfers,
  anotherGolfer,
  golferRowsWords,
  golfersFinding,
  sayAnotherGolfer,
} from '../prose/english/charts/hitters.ts';
import { golferFoot, keyWords } from '../prose/english/charts/gaps.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import type { Telling } from '../prose/telling.ts';
import { bandOf } from './bandOf.ts';
import { absentFigure, figureHead, type Figure } from './figure.ts';
import { gapRow, rowCells, rowsAhead } from './gapRow.ts';
import { pooledRowsChart } from './pooledRows.ts';
import { turnedPair } from './turnedPair.ts';

/** *Who gained?*: each golfer's own difference of the surest pair, slowest first, all together, and what another golfer might see. */
export function hittersFigure(metric: MetricFindings, telling: Telling): Figure {
  const { findings } = telling;
  const pair = surestFirst(metric).find(({ byHitter }) => byHitter.length > 1);
  if (pair === undefined)
    return absentFigure(
      figureHead('hitters', { of: 'metric', metric: metric.id }, findings),
      notDrawn.oneGolfer,
    );
  const turned = turnedPair(pair, metric, telling);
  const { more, ...band } = bandOf(metric, telling);
  const answer = pairAnswer(pair, metric, findings.design);
  // In the order of the design, which is by club speed.
  const each = findings.design.golfers.flatMap((golfer) => {
    const own = pair.byHitter.find(({ hitter }) => hitter === golfer.id);
    return own === undefined
      ? []
      : [gapRow(telling.golfer(golfer.id, telling.system), own, turned, metric, telling)];
  });
  const pooled = pair.ci === null ? null : gapRow(allGolfers(each.length), pair, turned, metric, telling);
  // The range says where another golfer's own difference would lie; it has no estimate of its own.
  const another =
    pair.newHitter === null
      ? null
      : {
          ...gapRow(anotherGolfer, { estimate: pair.estimate, ci: pair.newHitter }, turned, metric, telling),
          estimate: null,
          figure: '',
        };
  const rows = [...each, ...(pooled === null ? [] : [pooled])];
  const [a, b] = [turned.a.label, turned.b.label];
  const { opening, tableCaption, tableHead, ...words } = golferRowsWords(
    metric,
    { a, b, more },
    another !== null,
    telling,
  );
  return pooledRowsChart({
    ...figureHead('hitters', { of: 'pair', metric: metric.id, a: pair.a, b: pair.b }, findings),
    ...words,
    ...band,
    finding: golfersFinding(rowsAhead(each), answer, telling),
    foot: golferFoot(metric.id, pair.level),
    key: keyWords([pair], metric.matters, telling),
    open: pair.openBecause !== null,
    description: [
      opening,
      ...rows.map(({ name, told }) => `${name}: ${told}.`),
      ...(another === null ? [] : [sayAnotherGolfer(another.words)]),
    ].join(' '),
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: rowCells(rows, another),
    },
    a: turned.a,
    b: turned.b,
    each,
    counted: 'golfers',
    pooled,
    another,
  });
}
