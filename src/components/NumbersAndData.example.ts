import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'files, the kit and the sheet',
    props: { report: report('two-heads') },
    shows: ['shots.csv', 'findings.json', 'reproduce.R', '/kit/', '/sheet/', '/details/#all-numbers'],
    hides: ['<details'],
  },
];
