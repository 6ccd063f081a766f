import type { MethodSection } from './section.ts';

/** What several golfers can show. */
export const golfers: MethodSection = {
  id: 'hitters',
  title: 'Several golfers',
  blocks: () => [
    'The shots of one golfer say what happened to that golfer. With two to five golfers each counts alike, and the ' +
      'answer is for these golfers only. It says that nothing matters only if the range of each golfer says so, and ' +
      'no two of them differ.',
    'From six golfers on, we count golfers and not shots. Only then does a page speak of golfers like these. It also ' +
      "says what another golfer's own test of the same length could show.",
    'We say that two golfers differ only if the difference between them is sure once we allow for all pairs of ' +
      'golfers. How many gained is printed with how often luck alone would split them so unevenly.',
  ],
};
