import { ofReports } from './example.ts';

export const examples = ofReports([
  {
    of: 'two-heads',
    name: 'averages, differences with p, every shot, charts that are not drawn',
    shows: [
      'id="all-numbers"',
      'Carry, a main measure',
      'p is held against 0.05.',
      'Every shot in the order it was hit',
      'Charts not drawn, and why',
      'All but the main measures: Seen, but not what this test set out to check',
    ],
    hides: ['<details'],
  },
  {
    of: 'eight-golfers',
    name: 'eight golfers, each shot with who hit it',
    shows: ['<td>89 mph</td>', '<td>Hawthorn Long 90</td>'],
  },
]);
