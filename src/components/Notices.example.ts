import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'a correction and a reply, each leading to its words',
    props: { report: report('two-heads'), newer: null },
    shows: ['class="notice"', 'href="#corrections"', 'Corrected ', 'Reply from '],
    leadsTo: ['corrections', 'interest'],
  },
  {
    name: 'what took its place',
    props: { report: report('two-heads-before'), newer: 'Two driver heads, one shaft' },
    shows: ['Replaced by a newer report:', '/reports/two-heads/', 'Two driver heads, one shaft'],
  },
  {
    name: 'nothing to say',
    props: { report: report('six-shafts'), newer: null },
    shows: [],
    hides: ['class="notice"'],
  },
];
