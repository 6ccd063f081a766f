import type { FairnessId } from './findings.ts';

/** Why each thing on the list matters, for readers who never ran a test. */
export const fairnessWhy: Readonly<Record<FairnessId, string>> = {
  'one-thing-varied': 'If two things change at once, nobody can say which one made the gap.',
  order: 'A golfer warms up and tires. Hit in turn, that falls on all of them alike.',
  'warm-up': 'Without a warm-up, the first one hit gets the coldest swings.',
  'enough-shots': 'Every shot differs a little. Too few of them cannot show even a gap that matters.',
  'plan-first': 'Who decides after the shots what to look for will always find something.',
  'exclusion-rule': 'If the rule comes after the shot, a bad shot can be kept or dropped to suit.',
  'exclusions-even': 'Dropping bad shots of one and not of the other makes a gap out of nothing.',
  'same-ball': 'Balls differ, too. With two kinds of ball the gap may be the ball.',
  conditions: 'Warm air, height and wind change how far a ball flies, so others need to know them.',
  'reading-measured': 'A number that was worked out from others is only as right as the sum behind it.',
  'hitter-blind': 'A golfer who sees the numbers may swing harder for one than for another.',
  hitters: 'What helps one golfer may do nothing for the next.',
  interests: 'Who pays and who sells may wish for one answer, so readers should know.',
  'device-accuracy': 'A monitor cannot tell apart what lies closer together than its own error.',
  'shot-numbers': 'A missing number may be a shot that somebody did not like.',
};
