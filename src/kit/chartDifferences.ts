import { turnedPair } from '../charts/turnedPair.ts';
import { widestPair } from '../charts/widestPair.ts';
import type { Interval, MetricFindings, PairFindings } from '../findings/findings.ts';
import { sayBesideBar } from '../prose/english/answerWords.ts';
import { allGolfers, anotherGolfer } from '../prose/english/charts/hitters.ts';
import { pairAnswer } from '../prose/pairAnswer.ts';
import { drawnSize, sixDigits, sizeColumn, wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import type { Report } from './report.ts';

interface Found {
  readonly estimate: number | null;
  readonly ci: Interval | null;
}

/** Estimate and limits of a pair's difference, counted towards the first-named one. */
function sizesOf(
  report: Report,
  metric: MetricFindings,
  pair: PairFindings,
  { estimate, ci }: Found = pair,
): readonly (number | null)[] {
  const turned = turnedPair(pair, metric, report.telling);
  const [low, high] = ci === null ? [null, null] : turned.ci(ci);
  return [estimate === null ? null : turned.estimate(estimate), low, high].map((value) =>
    drawnSize(value, metric.id, report.telling.system),
  );
}

function namesOf(report: Report, metric: MetricFindings, pair: PairFindings): readonly string[] {
  const { a, b } = turnedPair(pair, metric, report.telling);
  return [a.label, b.label];
}

const nameColumns = [
  wordsColumn('First', 'Differences are counted towards this one.'),
  wordsColumn('Second', 'What it is compared with.'),
];

const differenceColumns = (report: Report, { id }: MetricFindings, of = '') => [
  sizeColumn(
    `Best estimate${of}`,
    id,
    report.telling.system,
    'Best estimate of the difference in the average.',
  ),
  sizeColumn(`From${of}`, id, report.telling.system, 'Where its likely range begins.'),
  sizeColumn(`To${of}`, id, report.telling.system, 'Where its likely range ends.'),
];

const answerColumn = wordsColumn('Answer', 'What the test says of the pair.');

const answer = (report: Report, metric: MetricFindings, pair: PairFindings): string =>
  sayBesideBar(pairAnswer(pair, metric, report.findings.design));

/** *How far apart?*: every pair of a measure. */
export function apartNumbers(report: Report, metric: MetricFindings): ChartNumbers {
  return {
    columns: [
      ...nameColumns,
      ...differenceColumns(report, metric),
      {
        name: 'p',
        type: 'number',
        unit: null,
        description: 'Two-sided; allows for all pairs judged together.',
      },
      answerColumn,
    ],
    rows: metric.pairs.map((pair) => [
      ...namesOf(report, metric, pair),
      ...sizesOf(report, metric, pair),
      pair.p === null ? null : sixDigits(pair.p),
      answer(report, metric, pair),
    ]),
  };
}

/** *Did leaving shots out change it?*: every pair twice. */
export function withAndWithoutNumbers(report: Report, metric: MetricFindings): ChartNumbers {
  return {
    columns: [
      ...nameColumns,
      ...differenceColumns(report, metric, ', all shots'),
      ...differenceColumns(report, metric, ', without those left out'),
      answerColumn,
    ],
    rows: metric.pairs.flatMap((pair) =>
      pair.withLeftOut === null
        ? []
        : [
            [
              ...namesOf(report, metric, pair),
              ...sizesOf(report, metric, pair, pair.withLeftOut),
              ...sizesOf(report, metric, pair),
              answer(report, metric, pair),
            ],
          ],
    ),
  };
}

/** *Who gained?*: one pair, golfer by golfer, all together, and where another golfer's difference would lie. */
export function golferNumbers(report: Report, metric: MetricFindings, pair: PairFindings): ChartNumbers {
  const { golfers } = report.findings.design;
  const each = golfers.flatMap(({ id }) => {
    const own = pair.byHitter.find(({ hitter }) => hitter === id);
    return own === undefined ? [] : [{ name: report.telling.golfer(id, report.telling.system), found: own }];
  });
  const rows: readonly { readonly name: string; readonly found: Found }[] = [
    ...each,
    ...(pair.ci === null ? [] : [{ name: allGolfers(each.length), found: pair }]),
    ...(pair.newHitter === null
      ? []
      : [{ name: anotherGolfer, found: { estimate: null, ci: pair.newHitter } }]),
  ];
  return {
    columns: [
      wordsColumn('Golfer', 'Who hit, by club speed and handicap.'),
      ...nameColumns,
      ...differenceColumns(report, metric),
    ],
    rows: rows.map(({ name, found }) => [
      name,
      ...namesOf(report, metric, pair),
      ...sizesOf(report, metric, pair, found),
    ]),
  };
}

/** *How large a difference does chance make?*: what equal ones would differ by, and the pair that came farthest apart. */
export function luckNumbers(report: Report, metric: MetricFindings): ChartNumbers {
  const { system } = report.telling;
  const widest = widestPair(metric);
  const rows: readonly (readonly [string, number | null])[] = [
    ['By chance, typically', metric.luck?.average ?? null],
    ['By chance, passed in one test of 20', metric.luck?.upTo ?? null],
    [widest === null ? 'Seen' : namesOf(report, metric, widest.pair).join(' and '), widest?.estimate ?? null],
  ];
  return {
    columns: [
      wordsColumn('What', 'Equal ones by chance, or the pair that came farthest apart.'),
      sizeColumn('Size', metric.id, system, 'Difference between the best and the last average.'),
    ],
    rows: rows.map(([what, size]) => [what, drawnSize(size, metric.id, system)]),
  };
}
