import { reportInOtherUnits } from '../site/toldTwice.ts';
import { kitOf } from '../kit/kitOf.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => {
  const own = report('six-shafts');
  const other = reportInOtherUnits(own);
  const [item] = kitOf(own).offered;
  const [same] = kitOf(other).offered;
  if (item === undefined || same === undefined) throw new Error('There is no chart to give away.');
  return [
    {
      name: 'in metres, its words in yards as well',
      props: {
        report: own,
        item,
        copies: [
          { system: own.telling.system, of: item },
          { system: other.telling.system, of: same },
        ],
        leads: true,
      },
      shows: [
        'The one to take first.',
        'download="six-shafts-apart.png"',
        'download="six-shafts-apart.csv"',
        'data-copy="short caption"',
        'data-copy="alternative text"',
        'data-copy="numbers"',
        'href="/reports/six-shafts/embed/apart/"',
        'data-units="yards" hidden',
      ],
    },
    {
      name: 'that is not the first to take',
      props: { report: own, item, copies: [{ system: own.telling.system, of: item }], leads: false },
      shows: ['data-copy="short caption"'],
      hides: ['The one to take first.', 'data-units='],
    },
  ];
};
