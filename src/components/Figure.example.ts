import { toldTwice } from '../site/toldTwice.ts';
import { drawn, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => {
  const one = report('two-heads');
  return [2, 3].map((level) => ({
    name: `under a heading of level ${level}`,
    props: { figure: drawn(one, 'shots'), told: toldTwice(one), level },
    shows: [`<h${level} id="shots-heading"`, 'class="question"', 'role="img"', '<figcaption>'],
  }));
};
