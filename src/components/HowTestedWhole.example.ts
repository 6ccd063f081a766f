import { withTold, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'every check and every condition, and the register',
    props: withTold(report('two-heads')),
    shows: ['id="conditions"', 'id="all-fairness"', 'Money', 'We keep no register of planned tests'],
    hides: ['<details'],
  },
];
