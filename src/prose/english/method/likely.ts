import type { MethodSection } from './section.ts';

/** What our one word for an interval means, and what it does not. */
export const likely: MethodSection = {
  id: 'likely',
  title: 'What "likely" means',
  blocks: ({ distance }) => [
    'There is luck in every difference between two averages: no golfer hits the same shot twice. So we never print ' +
      `a difference alone. "About ${distance(7)} farther, likely 3 to 11" holds two things. The 7 is our best ` +
      'estimate. The 3 and the 11 are the ends of the likely range.',
    '"Likely" is our one word for an interval. Ranges made like ours hold all the true average differences in at ' +
      'least 19 of 20 such tests. Where a test has two main measures, it is 39 of 40 for each. They allow for luck ' +
      'in these shots and for nothing else: not for a tired golfer, a worn mat or a monitor that is wrong.',
    'A range holds every size of the difference that goes well with the shots. Statisticians call such sizes ' +
      '"compatible with" the shots (Gelman and Greenland, BMJ 2019), and that is all we mean. A range is about ' +
      'averages. It is not the range of single shots, which differ far more.',
    'Averages hide how much shots overlap. So we add a line on single shots: "One shot with each: Alder went ' +
      'farther than Birch in 113 of 144 pairings." It pairs each counted shot of one with each of the other; a tie ' +
      'counts half. With more than one golfer we pair the shots of each golfer and add up. We leave the line out ' +
      'where we cannot say what caused the difference.',
  ],
};
