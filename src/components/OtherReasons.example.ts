import { withTold, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'two heads, every check a line with more on the page of details',
    props: withTold(report('two-heads')),
    shows: [
      'Could it be something else?',
      'As printed',
      'Does the answer hold?',
      '/reports/two-heads/details/#order',
    ],
    hides: ['undefined', '<details class="numbers"'],
  },
  {
    name: 'six shafts, what holds of every pair',
    props: withTold(report('six-shafts')),
    shows: ['what holds of every pair', '/reports/six-shafts/details/#checks'],
    hides: ['undefined', '<details class="numbers"'],
  },
];
