import { withTold, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'of a report with little recorded',
    props: { ...withTold(report('two-heads')), which: 'not-yes' },
    shows: ['class="fairness"', 'no.', 'not recorded.'],
    hides: ['score', '>yes.<'],
  },
  {
    name: 'every check, those that are yes at the end',
    props: { ...withTold(report('two-heads')), which: 'all' },
    shows: ['id="all-fairness"', 'no.', 'not recorded.', '>yes.<'],
  },
];
