import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'of two reports',
    props: { reports: [report('two-heads'), report('six-shafts')] },
    shows: ['<strong>Our interest.</strong>', 'Each report has the whole statement.'],
  },
];
