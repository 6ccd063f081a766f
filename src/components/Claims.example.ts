import { toldTwice } from '../site/toldTwice.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'said in yards, borne in the units of the page',
    props: { told: toldTwice(report('five-heads')) },
    shows: ['What we said, checked', 'at least 12 yards farther', 'The shots support this', 'metres'],
  },
  { name: 'none', props: { told: toldTwice(report('two-heads')) }, shows: [], hides: ['What we said'] },
];
