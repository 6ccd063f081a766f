import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'two sections',
    props: {
      label: 'In this report',
      sections: [
        { address: '#main', title: 'The top' },
        { address: '#main', title: 'The top again' },
      ],
    },
    shows: ['aria-labelledby="contents-label"', 'href="#main"', 'The top again'],
  },
];
