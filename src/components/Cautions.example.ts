import { toldTwice } from '../site/toldTwice.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'two heads, in metres and yards',
    props: { told: toldTwice(report('two-heads')) },
    shows: ['id="cautions"', 'Keep in mind', '<li>', 'data-units="yards" hidden'],
  },
];
