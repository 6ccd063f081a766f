import { ofReports } from './example.ts';

export const examples = ofReports([
  {
    of: 'two-heads',
    name: 'every check and every condition, and the register',
    shows: ['id="conditions"', 'id="all-fairness"', 'Money', 'We keep no register of planned tests'],
    hides: ['<details'],
  },
]);
