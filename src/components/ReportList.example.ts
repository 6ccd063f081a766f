import { listPages } from '../site/reportLists.ts';
import { reportKinds } from '../site/reportKinds.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => {
  const all = [report('two-heads'), report('six-shafts')];
  return [
    {
      name: 'two reports of two kinds',
      props: { list: listPages(all)[0], kinds: reportKinds(all), all },
      shows: [
        'class="interest of-list"',
        'sign-key',
        'Kinds of reports',
        'id="search"',
        'id="finding-six-shafts"',
      ],
      hides: ['Pages of this list'],
    },
    {
      name: 'no report yet',
      props: { list: listPages([])[0], kinds: [], all: [] },
      shows: ['id="list"'],
      hides: ['class="interest', 'sign-key', 'Kinds of reports', 'id="search"'],
    },
  ];
};
