import { z } from 'zod';
import { chance, count, gap, id, ids, interval, number, words } from './basics.ts';

export const overlay = words('something that must be said beside an answer', {
  'one-hitter': 'one golfer hit',
  'few-hitters': 'two to five golfers hit: the answer is about them only',
  'few-shots': 'fewer than ten counted shots with either',
  'one-example': 'one example of each was hit',
  'one-after-another': 'all shots with one came before those with the next',
  'order-unknown': 'the order of the shots is not known',
  'order-lever': 'one was hit later on the whole',
  'order-drift': 'readings drifted, and by enough to move the difference by half of what matters',
  'order-few-visits': 'hit several in a row, in fewer than three spells each',
  'visits-alike': 'the difference is lost when spells are counted instead of shots',
  'golfers-apart':
    'nothing that matters on average over the golfers, but that cannot be said of each of them',
  'mixed-with-swing': 'the swing differed too, by enough to matter',
  'not-planned': 'not one of the measures chosen before the test',
  'rests-on-one-shot': 'without one shot far from the others nothing is seen',
  'depends-on-left-out': 'the answer is another one with the left-out shots counted',
  'uneven-readings': 'readings are missing more often for one than for the other',
  'matters-unusual': "what counts as enough to matter is under a third or over three times the trade's value",
  'near-device': 'no larger for sure than the stated accuracy of the monitor',
  'modelled-reading': 'the reading is calculated or estimated, not measured',
  leans: 'most of the other ways to work it out disagree',
  'found-too-big': 'a test as short as this, when it finds a difference, usually finds it too big',
});

export const verdict = words('where the interval lies to 0 and to what matters', {
  clear: 'all of it beyond what matters',
  'size-unsure': 'all on one side of 0, the estimate at least what matters',
  'maybe-small': 'all on one side of 0, the estimate under what matters, one limit beyond it',
  small: 'all on one side of 0, and all under what matters',
  level: 'both sides of 0, and all under what matters',
  'too-close': 'both sides of 0, and beyond what matters on one side or both',
  'not-judged': 'there is no interval',
});

export const status = words('the answer as printed, order and other ways of working it out taken in', {
  clear: 'a difference that matters',
  'size-uncertain': 'a difference, by how much is uncertain',
  small: 'a difference too little to matter',
  level: 'no difference that matters',
  'cannot-tell': 'these shots cannot tell; or the cause is open and no difference was seen',
  'cause-unclear': 'a difference was seen, but its cause is open',
  'not-confirmed': 'most of the other ways to work it out disagree',
  'not-judged': 'not judged',
});

export const method = words('how the interval was worked out', {
  welch: "Welch's t on shots",
  'games-howell': 'Games-Howell on shots',
  'paired-rounds': "Student's t on the differences of complete rounds",
  'hitters-alike': "mean of each golfer's own difference, every golfer counted alike",
  'hitter-model': 'golfer + contender, golfers as the unit',
});

export const credit = words('what the difference may be put down to', {
  contender: 'the contender',
  open: 'the order of the shots may be the cause',
});

export const openBecause = words('why the cause is open', {
  'one-after-another': 'all shots with one came before those with the next',
  'order-unknown': 'the order of the shots is not known',
  lever: 'one was hit later on the whole',
  drift: 'readings drifted by enough to matter',
  'few-visits': 'fewer than three spells with each',
});

export const notJudged = z.strictObject({
  because: words('why there is no answer', {
    'no-reading': 'no reading at all',
    'too-few-shots': 'fewer than five counted shots',
    'too-few-golfers': 'fewer than six golfers hit both',
    'golfers-not-comparable': "golfers' averages do not hang together, or leave nothing to judge by",
    'golfer-too-few-shots': 'a golfer hit fewer than five shots',
    'all-alike': 'the file gives one and the same number throughout',
    'each-alike': 'the file gives one number for each contender, another for the next',
    'aim-off-line': 'shots lie far off the line on average, and no target is stated',
  }),
  contenders: ids('the contenders it is about'),
  fewest: z
    .int()
    .nonnegative()
    .nullable()
    .describe('the fewest shots, or the golfers who hit both; null where it is no matter of counts'),
});

export const hold = gap.extend({
  check: words('another way to work the difference out from the same shots', {
    'usual-strikes': 'without the most extreme fifth at either end (Yuen)',
    'by-rounds': 'rounds, or spells, as the unit',
    'drift-taken-out': 'with a steady drift taken out',
  }),
  state: words('whether the printed answer is still there', {
    agrees: 'at 95 %',
    narrow: 'at 90 % only',
    fails: 'not even at 90 %',
  }),
  estimate: number('the difference worked out this way'),
  ci: interval('95 % interval'),
});

export const hitterGap = z.strictObject({
  hitter: id('golfer'),
  estimate: number('difference of this golfer'),
  ci: interval("interval of this golfer's own shots").nullable(),
});

export const whoGained = z.strictObject({
  more: count('golfers who averaged more with a'),
  of: count('golfers who hit both'),
  clearlyMore: count('golfers whose own interval lies above 0'),
  clearlyLess: count('golfers whose own interval lies below 0'),
  byLuck: chance('chance of a count as uneven as this, were there no difference'),
  share: interval('Clopper-Pearson range of the share of golfers'),
});

export const deviceReach = z.strictObject({
  accuracy: number('stated accuracy of a reading'),
  ci: interval('the interval widened by the stated accuracy of either reading'),
  near: z.boolean().describe('whether a difference was seen that may be no larger than the accuracy'),
});

export const pair = z
  .strictObject({
    a: id('contender'),
    b: id('contender'),
    estimate: number('average of a minus average of b').nullable(),
    ci: interval('judged interval').nullable(),
    level: chance('of the judged interval'),
    p: chance('two-sided, held against 1 - level; allows for all pairs judged together').nullable(),
    method: method.nullable(),
    verdict,
    credit,
    status,
    ahead: id(
      'contender ahead the way that is wanted, sure or not; null at 0 or where not judged',
    ).nullable(),
    firstLook: z.boolean().describe('fewer than eight counted shots with either'),
    openBecause: openBecause.nullable(),
    hitLater: id('with `lever`: the contender that was hit later on the whole').nullable(),
    notJudged: notJudged.nullable().describe('why it was not judged; null where it was'),
    overlays: z.array(overlay).describe('the gravest first'),
    holds: z.array(hold).describe('other ways to work it out'),
    singleShot: z
      .strictObject({
        more: number('pairings in which `ahead` was ahead, ties as a half'),
        of: count('pairings of one counted shot with each, golfers each on their own'),
      })
      .nullable()
      .describe('one shot with each; null where the cause is open'),
    driftNeeded: number(
      'change from first to last shot of a steady drift that alone would make the whole difference, above 0 where readings rise',
    ).nullable(),
    byRounds: gap.nullable().describe('with complete rounds as the unit, where that is not how it is judged'),
    leaveOneOut: interval('smallest and largest difference with any one shot left out').nullable(),
    withLeftOut: gap
      .extend({ verdict })
      .nullable()
      .describe('with the shots counted that were left out; null where none was'),
    device: deviceReach
      .nullable()
      .describe('beside the stated accuracy; null where the error is the same for both, or none is stated'),
    atEqualSpeed: gap.nullable().describe('with the difference in club speed taken out'),
    byHitter: z.array(hitterGap).describe("each golfer's own difference; empty for one golfer"),
    hittersDiffer: z
      .array(z.strictObject({ x: id('golfer'), y: id('golfer') }))
      .describe('golfers whose differences differ, all pairs of golfers allowed for'),
    whoGained: whoGained.nullable().describe('how many golfers had more with a; from six golfers'),
    newHitter: interval("what another golfer's own test of this length would show").nullable(),
  })
  .describe('two contenders in one metric, a minus b');
