import { ofReports } from './example.ts';

export const examples = ofReports([
  {
    of: 'two-heads',
    name: 'two heads of one golfer, in metres and yards',
    shows: [
      'class="of-2"',
      '<th scope="col">Hawthorn Long 90</th>',
      'scope="row"',
      'sd is the standard deviation of single shots',
      'Within 14 metres',
      'Within 15 yards',
      'Calculated, not measured: ',
      'data-units="yards" hidden',
      '/reports/two-heads/details/#all-numbers',
    ],
  },
  {
    of: 'six-shafts',
    name: 'six shafts of long names, with prices',
    shows: [
      'class="of-6"',
      'Price',
      '€149',
      'Supplied by',
      'lent by its distributor',
      'Seen, not tested for: ',
    ],
  },
  {
    of: 'eight-golfers',
    name: 'eight golfers, whose averages have no range',
    shows: ['Averages of all shots of eight golfers', 'compared golfer by golfer'],
    hides: ['>sd '],
  },
]);
