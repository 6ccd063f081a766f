import { ofReports } from './example.ts';

export const examples = ofReports([
  {
    of: 'six-shafts',
    name: 'how sure, who hit, prices and a caution, each under its label',
    shows: ['<dt>How sure</dt>', '/glossary/#likely', '<dt>Who hit</dt>', '<dt>Price</dt>'],
  },
  {
    of: 'two-heads',
    name: 'without prices',
    shows: ['<dt>Who hit</dt>', 'Closest to you if you swing about'],
    hides: ['<dt>Price</dt>'],
  },
]);
