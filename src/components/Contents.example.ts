import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'two sections',
    props: {
      sections: [
        { id: 'main', title: 'The top' },
        { id: 'main', title: 'The top again' },
      ],
    },
    shows: ['aria-label="On this page"', 'href="#main"', 'The top again'],
  },
];
