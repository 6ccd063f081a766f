import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'where every bar is filled',
    props: { open: false },
    shows: ['class="sign-key"', 'Ring and bar.', 'Shaded.', 'Thick.'],
    hides: ['Not filled.'],
  },
  {
    name: 'where some bar is not filled',
    props: { open: true },
    shows: ['class="sign-key of-four"', 'Not filled.'],
  },
];
