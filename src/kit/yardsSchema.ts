import { z } from 'zod';

const shareShape = {
  value: z.number(),
  range: z.tuple([z.number(), z.number()]).describe('low and high'),
};
const share = z.strictObject(shareShape);

const partShape = {
  ...shareShape,
  bySet: z.array(share),
  settled: z.boolean(),
  why: z.array(
    z.enum([
      'one-set-only',
      'sets-differ-in-sign',
      'range-spans-zero',
      'within-the-known-error-of-the-spin-trend',
    ]),
  ),
  finding: z.boolean(),
};

const partId = z.enum(['ball-speed', 'club-speed', 'smash', 'launch-angle', 'spin-rate', 'direction']);

const account = z.strictObject({
  id: z.string(),
  calibration: z.strictObject({
    state: z.enum(['usual', 'unusual']),
    dragScale: z.number(),
    n: z.int(),
    rms: z.number(),
  }),
  modelled: share,
  flights: z.int(),
  misfit: z.number(),
  within: z.strictObject({ spinParameter: z.number(), reynolds: z.number() }),
});

/** Where the yards of each credited gap come from, metres, as `findings.json` has it. */
export const yards = z.array(
  z.strictObject({
    a: z.string(),
    b: z.string(),
    attribution: z.discriminatedUnion('state', [
      z.strictObject({
        state: z.literal('attributed'),
        level: z.number(),
        draws: z.int(),
        gap: share,
        parts: z.array(z.strictObject({ ...partShape, id: partId })),
        unexplained: z.strictObject(partShape),
        constant: z.array(partId),
        sets: z.array(account),
        leftOut: z.array(z.string()),
      }),
      z.strictObject({
        state: z.literal('not-possible'),
        why: z.enum(['too-few-shots', 'too-few-rounds', 'nothing-varied', 'carry-out-of-reach']),
      }),
    ]),
  }),
);
