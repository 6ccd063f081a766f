import { noBrand } from '../site/brand/brand.ts';
import type { Examples } from './example.ts';

export const examples: Examples = () => [
  {
    name: 'all that a shop may give',
    props: {
      brand: {
        ...noBrand,
        site: 'https://workshop.example/',
        booking: 'https://workshop.example/visit',
        contact: 'ask at the counter',
      },
      shop: 'Ash & Sons',
      corrections: 'errors@workshop.example',
    },
    shows: ['ask at the counter', 'Our own site: workshop.example', 'Book a time'],
    hides: ['mailto:'],
  },
  {
    name: 'only where errors are reported',
    props: { brand: noBrand, shop: 'Ash & Sons', corrections: 'errors@workshop.example' },
    shows: ['href="mailto:errors@workshop.example"'],
    hides: ['Our own site', 'Book'],
  },
];
