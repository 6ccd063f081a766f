import { z } from 'zod';
import { chance, count, id, ids, number, words } from './basics.ts';

const shareShape = {
  value: number('metres'),
  range: z.tuple([z.number(), z.number()]).describe('low and high, metres'),
};
const share = z.strictObject(shareShape);

const partShape = {
  ...shareShape,
  bySet: z.array(share).describe('by each set of coefficients'),
  settled: z.boolean().describe('whether the sign is known'),
  why: z
    .array(
      words('why a part is not settled', {
        'one-set-only': 'only one set of coefficients fits',
        'sets-differ-in-sign': 'sets of coefficients disagree which way it goes',
        'range-spans-zero': 'the shots leave open which way it goes',
        'within-the-known-error-of-the-spin-trend': 'no larger than the known error of the model with spin',
      }),
    )
    .describe('empty where settled'),
  finding: z.boolean().describe('settled and large enough to be told'),
};

const partId = words('what a part of the difference is put down to', {
  'ball-speed': 'ball speed',
  'club-speed': 'club speed',
  smash: 'smash factor',
  'launch-angle': 'launch angle',
  'spin-rate': 'spin rate',
  direction: 'launch direction and spin axis',
});

const account = z.strictObject({
  id: id('set of coefficients'),
  calibration: z.strictObject({
    state: words('whether the drag factor is one that ordinary balls and air bring about', {
      usual: 'it is',
      unusual: 'it is not',
    }),
    dragScale: number('drag factor'),
    n: count('shots it was fitted to'),
    rms: number('root mean square of carry read minus modelled, m'),
  }),
  modelled: share.describe('the difference by the model alone'),
  flights: count('flights flown'),
  misfit: number('largest error of the surface, m'),
  within: z
    .strictObject({
      spinParameter: number('share of the flight within the spin parameters that were measured'),
      reynolds: number('share within the Reynolds numbers that were measured'),
    })
    .describe('how much of the mean flight lies where the set was measured'),
});

const attribution = z
  .discriminatedUnion('state', [
    z.strictObject({
      state: z.literal('attributed').describe('split into parts'),
      level: chance('of every range'),
      draws: count('draws behind the ranges'),
      gap: share.describe('the difference as read'),
      parts: z.array(z.strictObject({ ...partShape, id: partId })).describe('parts by the model'),
      unexplained: z.strictObject(partShape).describe('read minus modelled'),
      constant: z.array(partId).describe('parts about which nothing varied'),
      sets: z.array(account).describe('what each set of coefficients makes of it'),
      leftOut: ids('sets whose drag no factor fits to the carries'),
    }),
    z.strictObject({
      state: z.literal('not-possible').describe('not split'),
      why: words('why not', {
        'too-few-shots': 'fewer than eight shots with a launch',
        'too-few-rounds': 'fewer than six rounds',
        'nothing-varied': 'nothing about the launch varied',
        'carry-out-of-reach': 'no drag of a golf ball gives these carries',
      }),
    }),
  ])
  .describe('metres, a minus b');

export const pairYards = z.strictObject({ a: id('contender'), b: id('contender'), attribution });
