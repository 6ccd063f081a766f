import { reportKinds } from '../site/reportKinds.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => {
  const kinds = reportKinds([report('two-heads'), report('six-shafts')]);
  return [
    {
      name: 'on the list of one kind',
      props: { kinds, all: 2, current: 'shafts' },
      shows: ['All 2 reports', 'Compared', 'href="/kinds/shafts/" aria-current="page"', 'heads 1'],
      hides: ['href="/" aria-current'],
    },
    {
      name: 'on the list of all, which is one report of no kind',
      props: { kinds: [], all: 1, current: null },
      shows: ['href="/" aria-current="page"', 'All 1 report'],
      hides: ['Compared', 'Hit with', '1 reports'],
    },
  ];
};
