import { disclosure } from '../../../src/prose/disclosure.ts';
import { version } from '../../../src/site/version.ts';
import type { ComponentExamples } from '../example.ts';

const groups = [
  {
    title: 'Place',
    items: [
      { label: 'Where', value: 'indoors, net at 4 m' },
      { label: 'Temperature', value: null },
      { label: 'Wind', value: null },
    ],
  },
];

export const dataTable: ComponentExamples = {
  component: 'DataTable',
  examples: () => [
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
  ],
};

export const disclosureList: ComponentExamples = {
  component: 'Disclosure',
  examples: (report) => [
    { name: 'not recorded in its place', props: { groups }, shows: ['indoors, net at 4 m', 'not recorded'] },
    {
      name: 'of a whole report',
      props: { groups: disclosure({ ...report('two-heads'), version }) },
      shows: ['Who hit', 'Money', 'Monitor'],
    },
  ],
};

export const notRecorded: ComponentExamples = {
  component: 'NotRecorded',
  examples: () => [
    {
      name: 'two missing',
      props: { groups },
      shows: ['We recorded 1 of 3 test details', 'Place: temperature, wind'],
    },
    {
      name: 'nothing missing',
      props: { groups: [{ title: 'Place', items: [{ label: 'Where', value: 'outdoors' }] }] },
      shows: ['We recorded 1 of 1 test details'],
      hides: ['Not recorded.'],
    },
  ],
};

export const contents: ComponentExamples = {
  component: 'Contents',
  examples: () => [
    {
      name: 'two sections',
      props: {
        sections: [
          { id: 'main', title: 'The top' },
          { id: 'main', title: 'The top again' },
        ],
      },
      shows: ['aria-label="On this page"', 'href="#main"', 'The top again'],
    },
  ],
};
