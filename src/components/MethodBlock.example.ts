import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'a paragraph, in which nothing is taken for markup',
    props: { block: 'Fewer than 5 shots are <not> enough.' },
    shows: ['<p>Fewer than 5 shots are &lt;not&gt; enough.</p>'],
  },
  {
    name: 'a list',
    props: { block: { list: ['The first.', 'The second.'] } },
    shows: ['<li>The first.</li>', '<li>The second.</li>'],
    hides: ['<p>'],
  },
  {
    name: 'a table with a column of ids',
    props: {
      block: {
        caption: 'What is measured',
        head: ['Measure', 'Name in the data'],
        rows: [['Carry', 'carryM']],
        idColumn: 1,
      },
    },
    shows: [
      '<caption>What is measured</caption>',
      'scope="row"',
      '<code>carryM</code>',
      'role="group" aria-label="What is measured" tabindex="0"',
    ],
    hides: ['<code>Carry'],
  },
];
