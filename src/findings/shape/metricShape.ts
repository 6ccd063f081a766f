import { z } from 'zod';
import { metrics, metricIds } from '../../trade/metrics.ts';
import { units } from '../../trade/units.ts';
import { chance, count, gap, id, ids, interval, number, words } from './basics.ts';
import { pair } from './pairShape.ts';

export const metricId = z.enum(metricIds).meta({
  description: 'a measure of the trade',
  oneOf: metricIds.map((metric) => ({ const: metric, description: metrics[metric].name })),
});

export const contenderSummary = z.strictObject({
  id: id('contender'),
  n: count('counted shots with a reading'),
  mean: number('average').nullable(),
  sd: z.number().nonnegative().nullable().describe('standard deviation'),
  ci: interval("the average's own 95 % interval; null for several golfers").nullable(),
  median: number('median').nullable(),
  min: number('least').nullable(),
  max: number('greatest').nullable(),
  sdCi: interval('95 % interval of the standard deviation; null under eight shots').nullable(),
});

export const spread = z.strictObject({
  p: chance('Brown-Forsythe over all contenders'),
  pairs: z
    .array(
      z.strictObject({
        a: id('contender'),
        b: id('contender'),
        ratio: number('standard deviation of a over that of b'),
        tighter: words('which scatters less', { a: 'the first', b: 'the second' }),
        p: chance('Brown-Forsythe, by Holm over all pairs'),
        clear: z.boolean().describe('whether the spreads differ clearly: p under 0.05'),
      }),
    )
    .describe('contenders with twelve shots or more'),
});

export const omnibus = z.strictObject({
  method: words('test of all contenders at once', {
    'welch-anova': "Welch's analysis of variance on shots",
    'hitter-model': 'golfer + contender, golfers as the unit',
  }),
  statistic: number('F'),
  df: z.tuple([z.number(), z.number()]).describe('degrees of freedom'),
  p: chance('of the statistic'),
});

/** Slope of a straight line through readings in hit order. */
const slope = {
  slope: number('change from one shot of the session to the next'),
  ci: interval('95 % interval of the slope'),
};

export const metric = z.strictObject({
  id: metricId,
  unit: z
    .enum(Object.values(units).map(({ id: unit }) => unit))
    .describe('canonical unit of every figure of this metric'),
  class: words('where the readings come from', {
    measured: 'seen by the monitor',
    derived: 'worked out from what it saw',
    modelled: 'calculated by a model of impact or flight',
    estimated: 'estimated rather than seen',
  }),
  looksEstimated: z
    .boolean()
    .describe('whether it counts as estimated only because one number stands on many shots'),
  readBy: words('who gives the readings', {
    monitor: 'the files hold them',
    'flight-model': 'our flight model stands in where the files have no column',
  }),
  resolution: z.number().nonnegative().describe("the step of the file's own numbers"),
  role: words('whether it was chosen to be judged', {
    primary: 'a main measure of the test',
    exploratory: 'looked at besides',
  }),
  better: words('which way is wanted', {
    more: 'more is wanted',
    less: 'less is wanted',
    neither: 'neither way: the greater number is called ahead',
  }),
  matters: z.number().positive().describe('the smallest difference that matters'),
  mattersFrom: words('who says what matters', {
    report: 'set in the report',
    shop: "the shop's usual value",
    trade: 'our value for the trade',
  }),
  mattersUnusual: z.boolean().describe("under a third or over three times the trade's value"),
  byContender: z.array(contenderSummary).describe('a contender each, in the order of the report'),
  omnibus: omnibus.nullable().describe('test of all contenders at once, where the method has one'),
  cellsLeftOut: count(
    'averages of a golfer with a contender on far fewer shots than usual, left out where golfers are the unit',
  ),
  golfersLeftOut: ids('golfers with too few shots to be judged beside the others'),
  judgedTogether: count('pairs judged together, which the interval of each allows for'),
  pairs: z.array(pair).describe('every pair of contenders'),
  spread: spread.nullable().describe('whether the scatter differs; one golfer'),
  drift: z
    .strictObject(slope)
    .nullable()
    .describe('a straight drift over all shots, contenders kept apart; one golfer, rows in hit order'),
  trends: z
    .array(z.strictObject({ id: id('contender'), ...slope }))
    .describe('a straight line through the own shots of each contender; one golfer, rows in hit order'),
  detectable: number('the least true difference that such a test finds four times in five').nullable(),
  luck: z
    .strictObject({
      average: number('best minus worst average of equal contenders, on average'),
      upTo: number('passed in 5 of 100 tests of equal contenders'),
    })
    .nullable()
    .describe('how far apart chance alone sets equal contenders'),
  shotsNeeded: interval(
    'shots with each to find what matters four times in five, as far as the spread is known',
  ).nullable(),
  shotsToShowLevel: number(
    'shots with each that it would take to be able to show that nothing matters; null where these could',
  ).nullable(),
  leading: ids('the best on average, and all that are not clearly behind it')
    .nullable()
    .describe('the contenders a headline names; null where none can be told'),
});

export const swing = z.strictObject({
  metric: words('what differences of the swing are priced in', {
    carry: 'carry',
    total: 'total distance',
    side: 'distance from the target line',
  }),
  margin: number('half of what matters, m: a difference worth less is the same swing'),
  level: chance('of every interval'),
  measures: z
    .array(
      z.strictObject({
        id: words('measure of the swing', {
          club_speed: 'club speed, m/s',
          attack_angle: 'attack angle, degrees',
          club_path: 'club path, degrees',
          face_to_path: 'face to path, degrees',
        }),
        pricedBy: words('what the price comes from', {
          'flight-model': 'our flight model',
          'trade-sensitivities': "the trade's rules of thumb",
        }),
        perUnit: interval('metres a unit of the measure')
          .nullable()
          .describe('null where a column that the price needs is missing'),
        pairs: z
          .array(
            gap.extend({
              a: id('contender'),
              b: id('contender'),
              worth: gap.nullable().describe('the difference in metres; null where it has no price'),
              across: gap
                .extend({
                  metric: words('what it is in', { carry: 'carry', side: 'distance from the target line' }),
                })
                .nullable()
                .describe('the difference of path or face in the other of carry and side, metres'),
              answer: words('whether the swing was the same', {
                same: 'worth less than the margin, in carry and to the side',
                different: 'off zero, and worth the margin or more in either',
                'cannot-tell': 'neither can be said',
                'not-known': 'a column that the price needs is missing',
              }),
            }),
          )
          .describe('a minus b'),
      }),
    )
    .describe('the measures that were read'),
});
