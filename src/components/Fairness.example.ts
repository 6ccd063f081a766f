import { ofReports } from './example.ts';

export const examples = ofReports([
  {
    of: 'two-heads',
    name: 'of a report with little recorded',
    props: { which: 'not-yes' },
    shows: ['class="fairness"', 'no.', 'not recorded.'],
    hides: ['score', '>yes.<', 'We wrote down nothing'],
  },
  {
    of: 'two-heads',
    name: 'every check, those that are yes at the end',
    props: { which: 'all' },
    shows: ['id="all-fairness"', 'no.', 'not recorded.', '>yes.<'],
  },
]);
