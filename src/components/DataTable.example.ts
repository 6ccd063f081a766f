import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'numbers to the right, a missing one as a dash',
    props: {
      table: {
        caption: 'Carry (yd)',
        head: ['Head', 'Average'],
        rows: [
          ['Alder', '−1.5'],
          ['Birch', '–'],
        ],
      },
    },
    shows: ['Carry (yd)', '−1.5', 'class="number"', 'scope="row"', '<caption>'],
  },
  {
    name: 'words are no numbers, and none is taken for markup',
    props: { table: { caption: 'Who', head: ['Golfer', 'Hand'], rows: [['One', 'left & <right>']] } },
    shows: ['left &amp; &lt;right&gt;'],
    hides: ['class="number"'],
  },
  {
    name: 'no rows',
    props: { table: { caption: 'Nothing yet', head: ['Head', 'Average'], rows: [] } },
    shows: ['Nothing yet', 'Average'],
  },
];
