import { withTold, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'conditions in brief, checks that are not yes, what is not recorded',
    props: withTold(report('two-heads')),
    shows: [
      'Who hit',
      'Where',
      'Fair-test checks: ',
      'test details',
      '<strong>Not recorded.</strong>',
      '/reports/two-heads/details/#conditions',
    ],
    hides: ['undefined'],
  },
];
