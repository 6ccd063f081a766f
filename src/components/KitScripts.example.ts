import { reportInOtherUnits } from '../site/toldTwice.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => {
  const own = report('two-heads');
  const other = reportInOtherUnits(own);
  return [
    {
      name: 'short and long, in metres and yards',
      props: { copies: [own, other].map((of) => ({ system: of.telling.system, of })) },
      shows: ['To say on air or in a video', 'data-copy="words for '],
    },
  ];
};
