import { cautionTable } from './cautionTable.ts';
import type { MethodSection } from './section.ts';
import { statusTable } from './statusTable.ts';

/** From averages to differences, and from these to answers. */
export const answers: MethodSection = {
  id: 'answers',
  title: 'From differences to answers',
  blocks: (telling) => [
    'We compare every two of the things tested. Our ranges are made so that all of them hold together, however ' +
      'many pairs there are. If nothing but luck is at work, about 5 tests in 100 show a false difference ' +
      'between any two.',
    'Each range is held against two lines. One is 0. The other is M, the smallest difference that matters, which ' +
      'is set before hitting. Where the range lies decides the answer; nobody words it afterwards. We compare ' +
      'unrounded numbers.',
    statusTable(telling.system),
    'There are no ranks. Whoever is not clearly behind the leader is named in the same breath as the leader.',
    'Some things must be said beside an answer, and some of them change it.',
    cautionTable(telling),
    'A test may name one main measure, or two. Two share the chance to be wrong, so each of them has wider ranges. ' +
      'All else in the file is "seen, but not what this test set out to check".',
    'A report may set its own M. If that is less than a third of our usual value, or more than three times as much, ' +
      'the page says so beside the answer, with who set it and when.',
  ],
};
