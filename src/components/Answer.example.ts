import { ofReports } from './example.ts';

export const examples = ofReports([
  {
    of: 'two-heads',
    name: 'two heads in metres and yards',
    shows: [
      'The answer: </span>',
      'Cannot tell',
      'Our interest.',
      'data-units="metres"',
      'data-units="yards" hidden',
    ],
  },
  {
    of: 'six-shafts',
    name: 'six heads of long names: leaders in one breath, where each came from',
    shows: ['carried farthest; we cannot tell them apart.', 'We took the others from stock.'],
  },
]);
