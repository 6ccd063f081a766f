import { disclosure } from '../prose/disclosure.ts';
import { version } from '../site/version.ts';
import type { Examples } from './example.ts';
import { groups } from './NotRecorded.example.ts';

export const examples: Examples = ({ report }) => [
  { name: 'not recorded in its place', props: { groups }, shows: ['indoors, net at 4 m', 'not recorded'] },
  {
    name: 'of a whole report',
    props: { groups: disclosure({ ...report('two-heads'), version }) },
    shows: ['Who hit', 'Money', 'Monitor'],
  },
];
