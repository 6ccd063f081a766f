import { describe as suite, expect, test } from 'vitest';
import { additiveModel } from '../../src/stats/additiveModel.ts';
import { brownForsythe } from '../../src/stats/brownForsythe.ts';
import { classicAnova } from '../../src/stats/classicAnova.ts';
import { commonSlope } from '../../src/stats/commonSlope.ts';
import { centre, describe } from '../../src/stats/describe.ts';
import { gamesHowell } from '../../src/stats/gamesHowell.ts';
import { leaveOneOut } from '../../src/stats/leaveOneOut.ts';
import { luck } from '../../src/stats/luck.ts';
import { meanInterval } from '../../src/stats/meanInterval.ts';
import { moments } from '../../src/stats/moments.ts';
import { predictionEllipse } from '../../src/stats/predictionEllipse.ts';
import { bonettSdInterval } from '../../src/stats/sdInterval.ts';
import { StatisticsError } from '../../src/stats/statisticsError.ts';
import { trimmedMoments } from '../../src/stats/trimmedMoments.ts';
import { welchAnova } from '../../src/stats/welchAnova.ts';
import { welchT } from '../../src/stats/welchT.ts';

const flat = { n: 5, mean: 3, variance: 0 };
const varied = { n: 5, mean: 4, variance: 2 };

const refusals: readonly (readonly [string, StatisticsError['kind'], () => unknown])[] = [
  ['moments of one value', 'sample-too-small', () => moments([3])],
  ['moments of a value that is no number', 'bad-argument', () => moments([3, NaN])],
  ['describe one value', 'sample-too-small', () => describe([3])],
  ['centre of nothing', 'sample-too-small', () => centre([])],
  ['a level of 1', 'bad-argument', () => describe([1, 2], 1)],
  ['Welch of two flat groups', 'no-spread', () => welchT(flat, flat, 0.95)],
  ['Games-Howell of one group', 'sample-too-small', () => gamesHowell([varied], 0.95)],
  ['Games-Howell with two flat groups', 'no-spread', () => gamesHowell([varied, flat, flat], 0.95)],
  ['Welch anova with a flat group', 'no-spread', () => welchAnova([varied, flat])],
  ['anova with one value a group', 'sample-too-small', () => classicAnova([[1], [2]])],
  [
    'anova of flat groups',
    'no-spread',
    () =>
      classicAnova([
        [1, 1],
        [2, 2],
      ]),
  ],
  [
    'Brown-Forsythe of flat groups',
    'no-spread',
    () =>
      brownForsythe([
        [1, 1, 1],
        [2, 2, 2],
      ]),
  ],
  ['Bonett of four values', 'sample-too-small', () => bonettSdInterval([1, 2, 3, 4], 0.95)],
  ['Bonett of a flat group', 'no-spread', () => bonettSdInterval([1, 1, 1, 1, 1], 0.95)],
  ['trimmed mean of nothing left', 'sample-too-small', () => trimmedMoments([1, 2, 3], 0.4)],
  ['trimming half', 'bad-argument', () => trimmedMoments([1, 2, 3], 0.5)],
  ['mean of equal values', 'no-spread', () => meanInterval([2, 2, 2], 0.95)],
  [
    'ellipse of two points',
    'sample-too-small',
    () =>
      predictionEllipse(
        [
          [1, 2],
          [2, 3],
        ],
        0.9,
      ),
  ],
  ['luck of one group', 'sample-too-small', () => luck([1])],
  ['luck without spread', 'bad-argument', () => luck([0, 1])],
  [
    'leave one of two out',
    'sample-too-small',
    () =>
      leaveOneOut(
        [
          [1, 2],
          [3, 5],
        ],
        0,
        1,
        0.95,
      ),
  ],
  [
    'additive model without residual df',
    'sample-too-small',
    () =>
      additiveModel(
        [
          { block: 0, treatment: 0, value: 1 },
          { block: 0, treatment: 1, value: 2 },
        ],
        0.95,
      ),
  ],
  [
    'common slope of a constant covariate',
    'no-spread',
    () =>
      commonSlope(
        [0, 0, 1, 1].map((group, i) => ({ group, covariate: group, value: i * i })),
        0.95,
      ),
  ],
];

suite('what cannot be worked out is refused, by kind', () => {
  test.each(refusals)('%s: %s', (_what, kind, act) => {
    let caught: unknown = null;
    try {
      act();
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(StatisticsError);
    expect(caught).toMatchObject({ kind });
  });

  test('the message says what is needed and what came', () => {
    expect(() => moments([3])).toThrow('moments: needs at least 2 values, got 1');
  });
});

test('one value still has a centre', () => {
  expect(centre([3])).toEqual({ n: 1, mean: 3, median: 3, min: 3, max: 3 });
});

test('one flat group beside a varied one: df of the varied one', () => {
  // Satterthwaite's df with all variance in one group is that group's n - 1
  const gap = welchT(flat, varied, 0.95);
  expect(gap.df).toBeCloseTo(4, 12);
  expect(gap.standardError).toBeCloseTo(Math.sqrt(0.4), 12);
});

test('leaving out a shot gives the gap of what is left', () => {
  const groups = [
    [1, 2, 3, 40],
    [5, 6, 7, 9],
    [2, 4, 4, 5],
  ];
  const left = leaveOneOut(groups, 0, 1, 0.95);
  expect(left).toHaveLength(8);
  const dropped = left.find((one) => one.group === 0 && one.place === 3);
  const [expected] = gamesHowell(
    [
      [1, 2, 3],
      [5, 6, 7, 9],
      [2, 4, 4, 5],
    ].map((group) => moments(group)),
    0.95,
  );
  expect(dropped?.gap()).toEqual(expected);
  // median 2.5, distances 1.5 0.5 0.5 37.5, MAD 1: 0.6745 x 37.5
  expect(dropped?.farOut).toBeCloseTo(25.29375, 10);
});
