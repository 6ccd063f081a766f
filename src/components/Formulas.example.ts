import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'all of them',
    props: {},
    shows: ['<dl class="formulas">', 'id="formula-', '<math', 'class="source"'],
  },
];
