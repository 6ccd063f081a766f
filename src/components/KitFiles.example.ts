import { kitOf } from '../kit/kitOf.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => {
  const own = report('six-shafts');
  return [
    {
      name: 'of the first chart, its pictures and its numbers',
      props: { report: own, item: kitOf(own).offered[0] },
      shows: ['href="/reports/six-shafts/charts/apart.csv"', 'apart-phone.png', '>What it draws<', ' PNG'],
    },
  ];
};
