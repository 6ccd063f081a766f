import type { DraftState } from '../site/draftState.ts';
import { openQuestion } from './OpenAnswers.example.ts';
import { keyMissing } from './ProblemList.example.ts';
import type { Examples } from './example.ts';

const finished: DraftState = {
  slug: 'first-test',
  understood: [{ label: 'shots', text: '24, of which none is left out' }],
  open: [],
  problems: [],
};

export const examples: Examples = () => [
  {
    name: 'answers that must and may be given, and what is wrong',
    props: {
      state: {
        ...finished,
        open: [
          openQuestion,
          { ...openQuestion, key: 'paid_by', line: 9, question: 'Who paid for the test?', must: false },
        ],
        problems: [keyMissing],
      } satisfies DraftState,
    },
    shows: ['Must be answered (1)', 'May be answered (1)', 'To be put right or to be known (1)', 'Line 3, '],
  },
  {
    name: 'nothing left to do',
    props: { state: finished },
    shows: ['<dt>Shots</dt>', 'none is left out'],
    hides: ['Must be answered', 'May be answered', 'To be put right'],
  },
];
