import { withTold, type Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'how sure, who hit, prices and a caution, each under its label',
    props: withTold(report('six-shafts')),
    shows: ['<dt>How sure</dt>', '/glossary/#likely', '<dt>Who hit</dt>', '<dt>Price</dt>'],
    hides: ['undefined'],
  },
  {
    name: 'without prices',
    props: withTold(report('two-heads')),
    shows: ['<dt>Who hit</dt>', 'Closest to you if you swing about'],
    hides: ['<dt>Price</dt>'],
  },
];
