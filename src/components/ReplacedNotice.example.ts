import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'over a report that another has replaced',
    props: { report: report('two-heads-before') },
    shows: ['class="notice"', 'href="/reports/two-heads/"', 'Two driver heads, one shaft'],
    hides: ['target='],
  },
  {
    name: 'in a frame, which its link leaves',
    props: { report: report('two-heads-before'), framed: true },
    shows: ['target="_top"'],
  },
  {
    name: 'over a report that stands',
    props: { report: report('two-heads') },
    shows: [],
    hides: ['class="notice"'],
  },
];
