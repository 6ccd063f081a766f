import { withTold, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'two heads in metres and yards',
    props: withTold(report('two-heads')),
    shows: [
      'The answer: </span>',
      'Cannot tell',
      'Our interest.',
      'data-units="metres"',
      'data-units="yards" hidden',
    ],
    hides: ['undefined'],
  },
  {
    name: 'six heads of long names: leaders in one breath, where each came from',
    props: withTold(report('six-shafts')),
    shows: ['carried farthest; we cannot tell them apart.', 'We took the others from stock.'],
  },
];
