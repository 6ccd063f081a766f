import { withTold, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'averages, differences with p, every shot, charts that are not drawn',
    props: withTold(report('two-heads')),
    shows: [
      'id="all-numbers"',
      'Carry, a main measure',
      'p is held against 0.05.',
      'Every shot in the order it was hit',
      'Charts not drawn, and why',
      'All but the main measures: Seen, but not what this test set out to check',
    ],
    hides: ['<details', 'undefined', 'NaN'],
  },
  {
    name: 'eight golfers, each shot with who hit it',
    props: withTold(report('eight-golfers')),
    shows: ['<td>89 mph</td>', '<td>Hawthorn Long 90</td>'],
    hides: ['undefined'],
  },
];
