import type { Examples } from './example.ts';

/** Of three answers one is given. */
export const groups = [
  {
    title: 'Place',
    items: [
      { label: 'Where', value: 'indoors, net at 4 m' },
      { label: 'Temperature', value: null },
      { label: 'Wind', value: null },
    ],
  },
];

export const examples: Examples = () => [
  {
    name: 'two missing',
    props: { groups },
    shows: ['We recorded 1 of 3 test details', 'Place: temperature, wind'],
  },
  {
    name: 'nothing missing',
    props: { groups: [{ title: 'Place', items: [{ label: 'Where', value: 'outdoors' }] }] },
    shows: ['We recorded 1 of 1 test details'],
    hides: ['Not recorded.'],
  },
];
