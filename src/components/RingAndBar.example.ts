import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'of two heads, named by the words over it',
    props: { report: report('two-heads'), labelledBy: 'example-name' },
    shows: ['class="sign"', 'role="img"', 'aria-labelledby="example-name'],
  },
];
