import type { OpenAnswer } from '../intake/draft/openAnswers.ts';
import type { Examples } from './example.ts';

/** One that a report cannot be published without. */
export const openQuestion: OpenAnswer = {
  key: 'question',
  file: 'reports/first-test/report.md',
  line: 3,
  question: 'What did you want to know?',
  must: true,
  asked: true,
};

export const examples: Examples = () => [
  {
    name: 'one',
    props: { heading: 'Must be answered', answers: [openQuestion] },
    shows: ['Must be answered (1)', 'Line 3, <code>question</code>: What did you want to know?'],
  },
  {
    name: 'none',
    props: { heading: 'Must be answered', answers: [] },
    shows: [],
    hides: ['Must be answered', '<ul'],
  },
];
