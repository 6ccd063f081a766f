import { noBrand } from '../site/brand/brand.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ brand }) => [
  {
    name: 'a shop without a logo',
    props: { brand: noBrand, shop: 'Ash & Sons' },
    shows: ['class="brand"', 'Ash &amp; Sons'],
    hides: ['<img', '<picture'],
  },
  {
    name: 'a logo for each ground',
    props: { brand, shop: 'Ash & Sons' },
    shows: [
      `srcset="/brand/${brand.logoDark?.name}"`,
      'media="screen and (prefers-color-scheme: dark)"',
      `src="/brand/${brand.logo?.name}" alt="Ash &amp; Sons" width="90" height="36"`,
    ],
  },
];
