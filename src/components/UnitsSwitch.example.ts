import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'as a place for its button',
    props: { system: 'metres' },
    shows: ['id="units"', 'data-own="metres"'],
    hides: ['<button'],
  },
];
