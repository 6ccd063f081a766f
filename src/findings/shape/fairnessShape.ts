import { z } from 'zod';
import { words } from './basics.ts';

export const fairnessCheck = z.strictObject({
  id: words('one thing that a fair test has', {
    'one-thing-varied': 'only one thing varied',
    order: 'an order that favours nobody',
    'warm-up': 'a warm-up first',
    'enough-shots': 'shots enough to find what matters',
    'plan-first': 'a plan written before the session',
    'exclusion-rule': 'a rule for leaving shots out, before the session',
    'exclusions-even': 'as many shots left out of each',
    'same-ball': 'one kind of ball',
    conditions: 'conditions given that others need',
    'reading-measured': 'main measures measured, not calculated',
    'hitter-blind': 'golfers who did not see the numbers',
    hitters: 'six golfers or more',
    interests: "the golfers' links to the shop given",
    'device-accuracy': 'a monitor that can tell apart what matters',
    'shot-numbers': 'shot numbers without a gap',
  }),
  state: words('whether this test has it', {
    yes: 'it has',
    no: 'it has not',
    'not-recorded': 'not recorded',
    stated: 'the shop states so; nothing else shows it',
  }),
  why: z.string().describe('why it matters, in one sentence'),
});
