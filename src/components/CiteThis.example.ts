import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'a report that was corrected',
    props: { report: report('two-heads') },
    shows: [
      'Cite this report.',
      ': Two driver heads, one shaft. Hit 2 March 2026',
      'Version 1.0.1, corrected ',
    ],
    hides: ['null'],
  },
];
