import type { Problem } from '../problems/problem.ts';
import type { Examples } from './example.ts';

/** An error of one answer. */
export const keyMissing: Problem = {
  kind: 'key-missing',
  severity: 'error',
  file: 'reports/first-test/report.md',
  line: 2,
  column: null,
  columnName: 'question',
  expected: 'an answer to question',
  found: null,
  cure: 'Write what you wanted to know.',
  forReader: null,
};

const letters: Problem = {
  ...keyMissing,
  kind: 'letters-lost',
  severity: 'warning',
  file: 'shop.yaml',
  line: null,
  columnName: null,
  expected: 'letters',
  found: 'Jos?',
  cure: 'Type the name again.',
};

export const examples: Examples = () => [
  {
    name: 'an error of one answer, a warning of a whole file',
    props: { problems: [keyMissing, letters] },
    shows: [
      'Error in reports/first-test/report.md, line 2, question: expected an answer to question; found nothing.',
      'Warning in shop.yaml: expected letters; found Jos',
    ],
    hides: ['null'],
  },
  { name: 'none', props: { problems: [] }, shows: [], hides: ['<ul'] },
];
