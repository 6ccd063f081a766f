import { figureCopies, toldTwice } from '../site/toldTwice.ts';
import { drawn, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => {
  const one = report('two-heads');
  return [
    {
      name: 'in one system of units',
      props: { figure: drawn(one, 'apart') },
      shows: ['chart-wide', 'chart-narrow'],
      hides: ['data-units'],
    },
    {
      name: 'in both, by one drawing',
      props: { figure: drawn(one, 'shots'), copies: figureCopies(toldTwice(one), 'shots') },
      shows: ['<g data-units="yards" display="none">', 'id="shots-wide-name"'],
      hides: ['shots-wide-yards'],
    },
    {
      name: 'in both, by two, since their words take unlike room',
      props: { figure: drawn(one, 'apart'), copies: figureCopies(toldTwice(one), 'apart') },
      shows: ['id="apart-wide-name"', 'data-units="yards"'],
    },
  ];
};
