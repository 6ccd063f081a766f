import { withTold, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'of a report with little recorded',
    props: { ...withTold(report('two-heads')), which: 'not-yes' },
    shows: [
      'class="fairness"',
      'no.',
      'not recorded.',
      'We answer who sells, lent and paid, but not how the golfer is linked to the shop.',
    ],
    hides: ['score', '>yes.<', 'We wrote down nothing'],
  },
  {
    name: 'every check, those that are yes at the end',
    props: { ...withTold(report('two-heads')), which: 'all' },
    shows: ['id="all-fairness"', 'no.', 'not recorded.', '>yes.<'],
  },
];
