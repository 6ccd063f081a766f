import { toldTwice } from '../site/toldTwice.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => {
  const two = report('two-measures');
  return [
    {
      name: 'a second measure with its own title and chart',
      props: { told: toldTwice(two), place: 1, figure: null },
      shows: ['id="answer-2"', 'answer-text'],
    },
    {
      name: 'no such measure',
      props: { told: toldTwice(report('two-heads')), place: 1, figure: null },
      shows: [],
      hides: ['<section', '<h2'],
    },
  ];
};
