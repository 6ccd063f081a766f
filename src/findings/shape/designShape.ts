import { z } from 'zod';
import { count, id, ids, number, words } from './basics.ts';

export const order = words('how the contenders followed one another', {
  'one-after-another': 'all shots with one before those with the next',
  'mini-blocks': 'spells of several shots with one',
  'rotation-same-order': 'rounds with each once, always in the same order',
  'rotation-order-changed': 'rounds with each once, the order changing',
  'rotation-orders-differ': 'rounds with each once, in an order that is not the same for all golfers',
  counterbalanced: 'golfers hit in different orders that even out between them',
  mixed: 'mixed in no pattern',
  'planned-random': 'shuffled, and reproduced by the seed of the plan',
  'stated-random': 'the shop states that it was shuffled; it cannot be checked',
  'stated-rotation': 'the shop states rounds; it cannot be checked',
  'stated-mini-blocks': 'the shop states spells; it cannot be checked',
  'stated-one-after-another': 'the shop states one after another',
  unknown: 'not known',
});

export const plan = words('when the plan was written', {
  'on-record': 'on record before the day of the session',
  'on-record-that-day': 'on record on the day of the session, at a time before that of the first shot',
  stated: 'before it, as the shop states',
  changed: 'stated, but not the plan on record',
  afterwards: 'on the day or later',
  'not-said': 'not said',
});

const speedRange = (whose: string) =>
  z
    .strictObject({ low: number('10th percentile, m/s'), high: number('90th percentile, m/s') })
    .nullable()
    .describe(`club speed of ${whose} counted shots; null where none was read`);

export const design = z.strictObject({
  hitters: count('golfers'),
  golfers: z
    .array(
      z.strictObject({
        id: id('golfer'),
        clubSpeed: speedRange("this golfer's"),
        shots: count('counted shots'),
      }),
    )
    .describe('by club speed, the slowest first; golfers without one last'),
  clubSpeed: speedRange('all'),
  order,
  rounds: count('complete rounds, where the order is in rounds').nullable(),
  sequence: ids('contenders in the order they were hit, where that was one after another').nullable(),
  unit: words('what the analysis counts', { shot: 'shots', hitter: 'golfers' }),
  plan,
  plannedInAdvance: z.boolean().describe('whether a record shows the plan before the session'),
});
