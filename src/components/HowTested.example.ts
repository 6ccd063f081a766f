import { ofReports } from './example.ts';

export const examples = ofReports([
  {
    of: 'two-heads',
    name: 'conditions in brief, checks that are not yes, what is not recorded',
    shows: [
      'Who hit',
      'Where',
      'Fair-test checks: ',
      'test details',
      '<strong>Not recorded.</strong>',
      '/reports/two-heads/details/#conditions',
    ],
  },
]);
