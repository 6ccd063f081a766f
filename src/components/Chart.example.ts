import { figureCopies, toldTwice } from '../site/toldTwice.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'one drawing in two widths, with the words of both systems',
    props: { copies: figureCopies(toldTwice(report('two-heads')), 'shots') },
    shows: ['chart-wide', 'chart-narrow', '<g data-units="yards" display="none">'],
  },
];
