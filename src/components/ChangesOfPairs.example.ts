import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'two pairs, one checked in two ways',
    props: {
      changes: [
        { pair: 'Alder & Birch', lines: ['It holds by ranks.', 'It holds without any one shot.'] },
        { pair: 'Alder and Cedar', lines: ['It holds by ranks.'] },
      ],
    },
    shows: [
      '<h3>Alder &amp; Birch</h3>',
      '<li>It holds without any one shot.</li>',
      '<h3>Alder and Cedar</h3>',
    ],
  },
  { name: 'no pair', props: { changes: [] }, shows: [], hides: ['<h3', '<ul'] },
];
