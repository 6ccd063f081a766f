import { gapEnds, gapFoot, keyWords } from '../prose/english/charts/gaps.ts';
import { rowAnswer } from '../prose/english/charts/rowAnswer.ts';
import {
  bothRanges,
  eitherWay,
  leftOutFinding,
  noneLeftOut,
  noPairBothWays,
  withAndWithoutWords,
} from '../prose/english/charts/withAndWithout.ts';
import { bandOf } from './bandOf.ts';
import type { Shown } from './chart.ts';
import type { ChartNumbers } from './chartNumbers.ts';
import { differenceNumbers } from './differenceNumbers.ts';
import { asIntervalRow, gapRow, type GapRow } from './gapRow.ts';
import type { GapWords } from './gapWords.ts';
import { absentChart, drawnChart, type ChartWords, type MadeChart } from './madeChart.ts';
import { outwardRows, refuseOutward } from './outwardRows.ts';
import { turnedPair } from './turnedPair.ts';

/** *Did leaving shots out change it?*: every pair with all shots and without those left out. */
export function makeWithAndWithout({ metric, session, telling }: Shown): MadeChart {
  const about = { of: 'metric', metric: metric.id } as const;
  const leftOut = session.shots.filter(({ excluded }) => excluded !== null).length;
  const both = metric.pairs.flatMap((pair) =>
    pair.withLeftOut === null
      ? []
      : [
          {
            pair,
            turned: turnedPair(pair, metric, telling),
            all: pair.withLeftOut,
            same: !pair.overlays.includes('depends-on-left-out'),
          },
        ],
  );
  if (leftOut === 0 || both.length === 0) return absentChart({ about }, noneLeftOut);
  const { more, ahead, ...band } = bandOf(metric, telling);
  const nameOf = ({ turned: { a, b } }: (typeof both)[number]): string => `${a.label} and ${b.label}`;
  const changed = both.filter(({ same }) => !same).map(nameOf);
  const { tableCaption, tableHead, allShots, kept, ...words } = withAndWithoutWords(
    metric,
    more,
    { leftOut, changed },
    telling,
  );
  const rows = both.map((one) => {
    const { pair, turned, same } = one;
    return {
      name: nameOf(one),
      indices: [turned.a.index, turned.b.index] as const,
      open: pair.openBecause !== null,
      sentence: eitherWay(rowAnswer(pair, metric, telling), same),
      all: gapRow(allShots(session.shots.length), one.all, turned, { metric, telling }),
      kept: gapRow(kept, pair, turned, { metric, telling }),
    };
  });
  return drawWithAndWithout({
    about,
    ...words,
    ...band,
    finding: leftOutFinding(metric, changed),
    ends: gapEnds(
      both.map(({ turned: { a, b } }) => [a.label, b.label] as const),
      ahead,
    ),
    foot: gapFoot(metric.id, metric.pairs[0]?.level ?? 0.95, metric.judgedTogether),
    key: keyWords(
      both.map(({ pair }) => pair),
      metric.matters,
      telling,
    ),
    description: rows
      .map(({ sentence, all, kept: without }) => bothRanges(sentence, all.told, without.told))
      .join(' '),
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: rows.map(({ name, all, kept: without, sentence }) => [
        name,
        ...all.cells,
        ...without.cells,
        sentence,
      ]),
    },
    pairs: rows,
    leftOut,
  });
}

/** Every pair twice. */
export function withAndWithoutNumbers({ metric, telling }: Shown): ChartNumbers {
  const { sizes, ofPairs } = differenceNumbers(metric, telling);
  return ofPairs(
    metric.pairs.filter(({ withLeftOut }) => withLeftOut !== null),
    [
      {
        columns: sizes.columns(', all shots'),
        cells: (pair) => sizes.cells(pair.withLeftOut, pair),
      },
      {
        columns: sizes.columns(', without those left out'),
        cells: (pair) => sizes.cells(pair, pair),
      },
    ],
  );
}

/** A pair's gap, `a` minus `b`, from all shots and from those that were kept. */
export interface PairedGaps {
  /** Places of the two in the report's list, from 0. */
  readonly indices: readonly [number, number];
  readonly open: boolean;
  /** Both answers: "Alder farther than Birch either way." */
  readonly sentence: string;
  /** Named "All 38 shots". */
  readonly all: GapRow;
  /** Named "Without the 2 left out". */
  readonly kept: GapRow;
}

export interface WithAndWithoutInput extends ChartWords, GapWords {
  readonly pairs: readonly PairedGaps[];
  /** Shots left out; without any there is no chart. */
  readonly leftOut: number;
}

/** The most pairs in one chart. */
const mostPairs = 6;

/**
 * For each pair its gap from all shots and from those kept; beyond six pairs only those with the contender listed first. Absent
 * where none was left out. Throws on numbers out of order.
 */
export function drawWithAndWithout(input: WithAndWithoutInput): MadeChart {
  const { leftOut } = input;
  const pairs =
    input.pairs.length <= mostPairs ? input.pairs : input.pairs.filter(({ indices }) => indices.includes(0));
  const drawing = {
    ...input,
    sections: pairs.map(({ sentence, all, kept, open }) => ({
      heading: sentence,
      rows: [asIntervalRow(all, false, open), asIntervalRow(kept, false, open)],
    })),
  };
  refuseOutward(drawing);
  if (leftOut === 0) return absentChart(input, noneLeftOut);
  if (!pairs.some(({ all, kept }) => all.interval !== null && kept.interval !== null)) {
    return absentChart(input, noPairBothWays);
  }
  return drawnChart(
    input,
    { drawn: pairs.length, recorded: input.pairs.length, counted: 'pairs' },
    (layout) => outwardRows(drawing, layout),
  );
}
