import { z } from 'zod';
import { problemKinds } from '../problems/kinds.ts';
import { metricIds } from '../trade/metrics.ts';
import { units } from '../trade/units.ts';
import { yards } from './yardsSchema.ts';

const id = z.string().min(1);
const count = z.int().nonnegative();
const chance = z.number().min(0).max(1);
const interval = z.tuple([z.number(), z.number()]).describe('lower and upper limit');
const metric = z.enum(metricIds);

const overlay = z.enum([
  'one-hitter',
  'few-hitters',
  'few-shots',
  'one-example',
  'one-after-another',
  'order-unknown',
  'order-lever',
  'order-drift',
  'order-few-visits',
  'visits-alike',
  'mixed-with-swing',
  'not-planned',
  'rests-on-one-shot',
  'depends-on-left-out',
  'near-device',
  'modelled-reading',
  'leans',
  'found-too-big',
]);

const verdict = z.enum(['clear', 'size-unsure', 'maybe-small', 'small', 'level', 'too-close', 'not-judged']);

const gap = z.strictObject({ estimate: z.number(), ci: interval });

const summary = z.strictObject({
  id,
  n: count,
  mean: z.number().nullable(),
  sd: z.number().nonnegative().nullable(),
  ci: interval.nullable(),
  median: z.number().nullable(),
  min: z.number().nullable(),
  max: z.number().nullable(),
  sdCi: interval.nullable().describe('interval of the sd'),
});

const pair = z
  .strictObject({
    a: id,
    b: id,
    estimate: z.number().nullable(),
    ci: interval.nullable(),
    level: chance,
    p: chance.nullable(),
    method: z.enum(['welch', 'games-howell', 'hitters-alike', 'hitter-model']).nullable(),
    verdict,
    credit: z.enum(['contender', 'open']).describe('open: the order of the shots may be the cause'),
    overlays: z.array(overlay),
    holds: z.array(
      z.strictObject({
        check: z.enum(['usual-strikes', 'by-rounds', 'drift-taken-out']),
        state: z.enum(['agrees', 'narrow', 'fails']),
      }),
    ),
    leaveOneOut: interval.nullable(),
    withLeftOut: gap.extend({ verdict }).nullable(),
    device: z.strictObject({ accuracy: z.number(), ci: interval, near: z.boolean() }).nullable(),
    atEqualSpeed: gap.nullable(),
    byHitter: z.array(z.strictObject({ hitter: id, estimate: z.number(), ci: interval.nullable() })),
    whoGained: z
      .strictObject({
        more: count,
        of: count,
        clearlyMore: count,
        clearlyLess: count,
        byLuck: chance,
        share: interval,
      })
      .nullable(),
    newHitter: interval.nullable(),
  })
  .describe('a minus b');

const metricFindings = z.strictObject({
  id: metric,
  unit: z.enum(Object.values(units).map(({ id: unit }) => unit)),
  class: z.enum(['measured', 'derived', 'modelled', 'estimated']),
  readBy: z
    .enum(['monitor', 'flight-model'])
    .describe('our flight model stands in where the files have no column'),
  role: z.enum(['primary', 'exploratory']),
  better: z.enum(['more', 'less', 'neither']),
  matters: z.number().positive(),
  byContender: z.array(summary),
  omnibus: z
    .strictObject({
      method: z.enum(['welch-anova', 'hitter-model']),
      statistic: z.number(),
      df: z.tuple([z.number(), z.number()]),
      p: chance,
    })
    .nullable(),
  cellsLeftOut: count,
  pairs: z.array(pair),
  spread: z
    .strictObject({
      p: chance,
      pairs: z.array(
        z.strictObject({ a: id, b: id, ratio: z.number(), tighter: z.enum(['a', 'b']), p: chance }),
      ),
    })
    .nullable(),
  drift: z.strictObject({ slope: z.number(), ci: interval }).nullable().describe('a shot'),
  detectable: z.number().nullable(),
  luck: z.strictObject({ average: z.number(), upTo: z.number() }).nullable(),
  shotsNeeded: interval.nullable(),
  shotsToShowLevel: z.number().nullable(),
  leading: z.array(id).nullable(),
});

const swing = z.strictObject({
  metric: z.enum(['carry', 'total', 'side']),
  margin: z.number(),
  level: chance,
  measures: z.array(
    z.strictObject({
      id: z.enum(['club_speed', 'attack_angle', 'club_path', 'face_to_path']),
      pricedBy: z.enum(['flight-model', 'trade-sensitivities']),
      perUnit: interval,
      pairs: z.array(
        gap.extend({ a: id, b: id, worth: gap, answer: z.enum(['same', 'different', 'cannot-tell']) }),
      ),
    }),
  ),
});

const landing = z.strictObject({
  laneM: z.number(),
  byContender: z.array(
    z.strictObject({
      id,
      n: count,
      meanSide: z.number().nullable(),
      meanCarry: z.number().nullable(),
      within: count,
      withinShare: interval.nullable(),
      left: z.number(),
      right: z.number(),
      nextShot: z
        .strictObject({
          centre: z.tuple([z.number(), z.number()]).describe('side and carry'),
          halfAxes: z.tuple([z.number(), z.number()]),
          angle: z.number().describe('radians'),
        })
        .nullable(),
    }),
  ),
});

/** The shape of `findings.json`, version 1: SI units, finite numbers, null for what cannot be worked out. */
export const findingsSchema = z.strictObject({
  version: z.literal(1),
  slug: id,
  title: id,
  date: z.iso.date(),
  units: z.literal('SI'),
  contenders: z.array(z.strictObject({ id, label: id, shots: count, excluded: count })),
  design: z.strictObject({
    hitters: count,
    order: z.enum([
      'one-after-another',
      'mini-blocks',
      'rotation-same-order',
      'rotation-order-changed',
      'mixed',
      'planned-random',
      'stated-random',
      'stated-rotation',
      'stated-mini-blocks',
      'stated-one-after-another',
      'unknown',
    ]),
    rounds: count.nullable(),
    sequence: z.array(id).nullable(),
    unit: z.enum(['shot', 'hitter']),
    plan: z.enum(['on-record', 'stated', 'changed', 'afterwards', 'not-said']),
    plannedInAdvance: z.boolean(),
  }),
  metrics: z.array(metricFindings),
  straighter: z.array(pair).nullable(),
  swing: swing.nullable(),
  yards,
  landing: landing.nullable(),
  launchWindow: z
    .strictObject({
      ballSpeed: z.number(),
      sets: count,
      launchAngles: z.array(z.number()),
      spinRates: z.array(z.number()),
      short: z.array(z.array(z.number())),
    })
    .nullable(),
  claims: z.array(
    z.strictObject({
      say: z.string(),
      standing: z.enum(['borne-out', 'weaker-than-said', 'not-shown', 'contradicted']),
      metric,
      direction: z.enum(['more', 'less', 'tighter', 'straighter']),
      of: id,
      than: id,
      byAtLeast: z.number(),
      planned: z.boolean(),
      gap: gap.nullable(),
      spread: z.strictObject({ ratio: z.number(), p: chance, tighter: z.enum(['of', 'than']) }).nullable(),
    }),
  ),
  fairness: z.array(
    z.strictObject({ id, state: z.enum(['met', 'not-met', 'not-recorded']), why: z.string() }),
  ),
  caveats: z.array(overlay),
  problems: z.array(
    z.strictObject({
      kind: z.string().refine((kind) => Object.hasOwn(problemKinds, kind)),
      severity: z.enum(['error', 'warning']),
      file: z.string(),
      line: z.int().nullable(),
      column: z.int().nullable(),
      message: z.string(),
    }),
  ),
  seed: z.string(),
});
