import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { pairAnswer, surestFirst } from '../prose/pairAnswer.ts';
import { golferFoot, keyWords } from '../prose/english/charts/gaps.ts';
import {
  allGolfers,
  anotherGolfer,
  golferRowsWords,
  golfersFinding,
  oneGolfer,
  sayAnotherGolfer,
} from '../prose/english/charts/hitters.ts';
import type { Telling } from '../prose/telling.ts';
import { bandOf } from './bandOf.ts';
import type { Shown } from './chart.ts';
import { wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import { differenceNumbers, type FoundDifference } from './differenceNumbers.ts';
import { gapRow, rowCells, rowsAhead } from './gapRow.ts';
import { absentChart, type MadeChart } from './madeChart.ts';
import { drawPooledRows } from './pooledRows.ts';
import { turnedPair } from './turnedPair.ts';

/** *Who gained?*: each golfer's own difference of the surest pair, slowest first, all together, and what another golfer might see. */
export function makeHitters({ metric, telling }: Shown): MadeChart {
  const { findings } = telling;
  const pair = shownPair(metric);
  if (pair === undefined) return absentChart({ about: { of: 'metric', metric: metric.id } }, oneGolfer);
  const turned = turnedPair(pair, metric, telling);
  const { more, ...band } = bandOf(metric, telling);
  const answer = pairAnswer(pair, metric, findings.design);
  const each = golferByGolfer(pair, telling).map(({ name, found }) =>
    gapRow(name, found, turned, { metric, telling }),
  );
  const pooled = pair.ci === null ? null : gapRow(allGolfers(each.length), pair, turned, { metric, telling });
  // The range says where another golfer's own difference would lie; it has no estimate of its own.
  const another =
    pair.newHitter === null
      ? null
      : {
          ...gapRow(anotherGolfer, { estimate: pair.estimate, ci: pair.newHitter }, turned, {
            metric,
            telling,
          }),
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
  return drawPooledRows({
    about: { of: 'pair', metric: metric.id, a: pair.a, b: pair.b },
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

/** The surest pair that more than one golfer hit. */
const shownPair = (metric: MetricFindings): PairFindings | undefined =>
  surestFirst(metric).find(({ byHitter }) => byHitter.length > 1);

/** Each golfer's own difference, in the order of the design, which is by club speed. */
function golferByGolfer(pair: PairFindings, telling: Telling) {
  return telling.findings.design.golfers.flatMap(({ id }) => {
    const own = pair.byHitter.find(({ hitter }) => hitter === id);
    return own === undefined ? [] : [{ name: telling.golfer(id, telling.system), found: own }];
  });
}

/** The pair golfer by golfer, all together, and where another golfer's difference would lie. */
export function hittersNumbers({ metric, telling }: Shown): ChartNumbers {
  const pair = shownPair(metric);
  if (pair === undefined) return { columns: [], rows: [] };
  const each = golferByGolfer(pair, telling);
  const rows: readonly { readonly name: string; readonly found: FoundDifference }[] = [
    ...each,
    ...(pair.ci === null ? [] : [{ name: allGolfers(each.length), found: pair }]),
    ...(pair.newHitter === null
      ? []
      : [{ name: anotherGolfer, found: { estimate: null, ci: pair.newHitter } }]),
  ];
  const { names, sizes } = differenceNumbers(metric, telling);
  return {
    columns: [
      wordsColumn('Golfer', 'Who hit, by club speed and handicap.'),
      ...names.columns,
      ...sizes.columns(),
    ],
    rows: rows.map(({ name, found }) => [name, ...names.cells(pair), ...sizes.cells(found, pair)]),
  };
}
