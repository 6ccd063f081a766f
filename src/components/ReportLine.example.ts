import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'published',
    props: { report: report('two-heads'), level: 2, replacedBy: null },
    shows: ['24 shots', '2 March 2026', 'invented data', '<h2', 'aria-labelledby="finding-two-heads"'],
    hides: ['Withdrawn', 'Replaced'],
  },
  {
    name: 'replaced',
    props: { report: report('two-heads-before'), level: 2, replacedBy: 'Two driver heads, one shaft' },
    shows: ['Replaced', 'A newer report, “Two driver heads, one shaft”, replaces it. It said: '],
  },
  {
    name: 'withdrawn, without its answer',
    props: { report: report('taken-back'), level: 2, replacedBy: null },
    shows: ['Withdrawn 20 February 2026.'],
    hides: ['carried farther', '<svg'],
  },
];
