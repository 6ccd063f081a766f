import { quoted } from '../answerWords.ts';
import type { MethodSection } from './section.ts';

/** Other ways to work out the same difference, and what a test can see at all. */
export const checks: MethodSection = {
  id: 'holds',
  title: 'Our checks',
  blocks: () => [
    'With one golfer we check a main answer in up to three other ways:',
    {
      list: [
        'Without extreme shots: the lowest and the highest fifth are set aside. This takes eight shots of each.',
        'Round by round: what changed from round to round is taken out. This takes six whole rounds, or four ' +
          'spells of each.',
        'Allowing for drift: a steady change over the test is taken out.',
      ],
    },
    'A check confirms a difference if its own likely range is on the same side of 0. It is narrow if only a ' +
      'range at 90% is. The page gives the difference and the range of every check. If two fail, or the only one ' +
      'does, the answer is ' +
      `${quoted('not-confirmed')}.`,
    'The checks use the same shots, so they are not a second test, and they comfort little. With two clubs, 88 of ' +
      '100 differences made by chance pass them; with more, about 6 in 10 do.',
    'Beside them stands how far the difference moves when any one shot is left out, and the answer with every shot ' +
      'counted that was left out.',
  ],
};

/** How large a difference may stay hidden, and what luck alone does. */
export const reach: MethodSection = {
  id: 'reach',
  title: 'What a test can see, and luck',
  blocks: () => [
    'How small a difference a test can find depends on its number of shots and on their spread. We print the ' +
      'difference that it would find four times in five. We never take it from the difference that we saw. The ' +
      'shots needed are a range, since we know the spread only roughly.',
    'Shots in spells find less. Where 12 shots each, counted one by one, would find a difference in 83 tests of ' +
      '100, four spells of three find it in about 70. We say so in the plan and on the page.',
    'Even equal clubs have a best and a worst average. For luck alone we print how far these two lie apart as a ' +
      'rule, and how far in one test of 20.',
  ],
};

/** Spread, accuracy and the landing chart. */
export const landing: MethodSection = {
  id: 'landing',
  title: 'Spread and landing',
  blocks: ({ distance }) => [
    'We judge who was more consistent only from 12 shots of each; five shots cannot say. More accurate means nearer ' +
      `to the target line on average. We also count the shots within ${distance(15)} of the line.`,
    'The curve in the landing chart should hold nine in ten further shots, if nothing changes. We draw it from ten ' +
      'shots up, for one golfer at a time.',
  ],
};
