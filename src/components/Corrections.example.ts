import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => [
  {
    name: 'a correction with old and new, a reply whole, an address',
    props: {
      front: report('two-heads').source.front,
      contact: 'corrections@example.test',
      slug: 'two-heads',
      versions: [],
      moved: [],
    },
    shows: ['It said: 9 degrees. It now says: 10.5 degrees.', 'another shaft &amp; say so', 'mailto:'],
  },
  {
    name: 'none so far, nowhere to write to, an answer that moved',
    props: {
      front: report('five-heads').source.front,
      contact: null,
      slug: 'five-heads',
      versions: [],
      moved: [{ since: '2026-04-05', then: 'Alder and Birch: no gap that matters.', now: null }],
    },
    shows: ['is not recorded', '5 April 2026', 'we ask this no more.'],
  },
];
