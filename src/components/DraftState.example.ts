import type { DraftState } from '../site/draftState.ts';
import { keyMissing } from './ProblemList.example.ts';
import type { Examples } from './example.ts';

const finished: DraftState = {
  slug: 'first-test',
  understood: [{ label: 'shots', text: '24, of which none is left out' }],
  open: [],
  problems: [],
};

const file = 'reports/first-test/report.md';

export const examples: Examples = () => [
  {
    name: 'answers that must and may be given, and what is wrong',
    props: {
      state: {
        ...finished,
        open: [
          { key: 'question', file, line: 3, question: 'What did you want to know?', must: true, asked: true },
          { key: 'paid_by', file, line: 9, question: 'Who paid for the test?', must: false, asked: true },
        ],
        problems: [keyMissing],
      } satisfies DraftState,
    },
    shows: ['Must be answered (1)', 'May be answered (1)', 'To be put right or to be known (1)', 'Line 3, '],
    hides: ['undefined'],
  },
  {
    name: 'nothing left to do',
    props: { state: finished },
    shows: ['<dt>Shots</dt>', 'none is left out'],
    hides: ['Must be answered', 'May be answered', 'To be put right'],
  },
];
