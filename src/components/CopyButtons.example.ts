import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'where it is said what was copied',
    props: {},
    shows: ['id="copied"', 'role="status"'],
    hides: ['<button'],
  },
];
