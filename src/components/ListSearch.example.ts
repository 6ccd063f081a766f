import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'as a place for its field',
    props: {},
    shows: ['id="search"', 'data-index="/search.json"'],
    hides: ['<input'],
  },
];
