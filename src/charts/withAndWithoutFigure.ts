import type { MetricFindings } from '../findings/findings.ts';
import type { Session } from '../intake/session.ts';
import { gapEnds, gapFoot, keyWords } from '../prose/english/charts/gaps.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { rowAnswer } from '../prose/english/charts/rowAnswer.ts';
import {
  bothRanges,
  eitherWay,
  leftOutFinding,
  withAndWithoutWords,
} from '../prose/english/charts/withAndWithout.ts';
import type { Telling } from '../prose/telling.ts';
import { bandOf } from './bandOf.ts';
import { absentFigure, figureHead, type Figure } from './figure.ts';
import { gapRow } from './gapRow.ts';
import { turnedPair } from './turnedPair.ts';
import { withAndWithoutChart } from './withAndWithout.ts';

/** *With and without*: every pair with all shots and without those left out. */
export function withAndWithoutFigure(metric: MetricFindings, session: Session, telling: Telling): Figure {
  const head = figureHead('with-and-without', { of: 'metric', metric: metric.id }, telling.findings);
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
  if (leftOut === 0 || both.length === 0) return absentFigure(head, notDrawn.noneLeftOut);
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
      all: gapRow(allShots(session.shots.length), one.all, turned, metric, telling),
      kept: gapRow(kept, pair, turned, metric, telling),
    };
  });
  return withAndWithoutChart({
    ...head,
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
