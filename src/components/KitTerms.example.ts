import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'of a site whose address is not recorded',
    props: { report: report('two-heads') },
    shows: ['<dt>Terms</dt>', 'data-copy="credit line"', 'The address of this site is not recorded'],
    hides: ['null', '/corrections.xml'],
  },
];
