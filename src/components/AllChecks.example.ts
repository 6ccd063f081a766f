import { toldTwice } from '../site/toldTwice.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'a table of other ways, the rest in sentences',
    props: { told: toldTwice(report('two-heads')) },
    shows: ['id="checks"', 'Whichever single shot is left out'],
    hides: ['<details'],
  },
];
