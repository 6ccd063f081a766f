import type { FairnessId } from './findings.ts';

/** Why each check matters, for readers who never ran a test. */
export const fairnessWhy: Readonly<Record<FairnessId, string>> = {
  'one-thing-varied': 'If two things change at once, nobody can say which one made the difference.',
  order: 'Golfers warm up and tire; hitting in rounds spreads that evenly.',
  'warm-up': 'Without a warm-up, the first one hit gets the coldest swings.',
  'enough-shots': 'No two shots are the same, and too few of them can hide a difference that matters.',
  'plan-first': 'Anyone who decides afterwards what to look for will find something.',
  'exclusion-rule': 'If the rule comes after the shot, a bad shot can be kept or dropped to suit.',
  'exclusions-even': 'Dropping the bad shots of one and not of the other makes a difference out of nothing.',
  'same-ball': 'Balls differ, too. With two kinds of ball, the ball may have made the difference.',
  conditions: 'Warm air, height and wind change how far a ball flies, so others need to know them.',
  'reading-measured': 'A calculated number is only as good as its formula.',
  'hitter-blind': 'A golfer who sees the numbers may swing harder for one than for another.',
  hitters: 'What helps one golfer may do nothing for the next.',
  interests: 'Whoever pays or sells may want a particular answer.',
  'device-accuracy': 'A monitor cannot tell apart what lies closer together than its own error.',
  'shot-numbers': 'A missing number may be a shot that somebody did not like.',
};
