import { ofReports } from './example.ts';

export const examples = ofReports([
  {
    of: 'two-heads',
    name: 'two heads, every check a line with more on the page of details',
    shows: [
      'Could it be something else?',
      'As printed',
      'Does the answer hold?',
      '/reports/two-heads/details/#order',
    ],
    hides: ['<details class="numbers"'],
  },
  {
    of: 'six-shafts',
    name: 'six shafts, what holds of every pair',
    shows: ['what holds of every pair', '/reports/six-shafts/details/#checks'],
    hides: ['<details class="numbers"'],
  },
]);
