import type { PricedGap, PriceInput } from '../../../src/charts/priceInput.ts';
import { exampleWords } from './heads.ts';

export const pricedGap = (
  name: string,
  price: number,
  [estimate, low, high]: readonly [number, number, number],
  words = `${price} dearer, about ${Math.abs(estimate)} yards, likely ${Math.abs(low)} to ${Math.abs(high)}`,
): PricedGap => ({ name, price, estimate, low, high, words });

export const priceInputOf = (pairs: readonly PricedGap[], rest: Partial<PriceInput> = {}): PriceInput => ({
  ...exampleWords(
    'price',
    'What do the yards cost?',
    'Price and carry of heads with a clear gap',
    pairs.map(({ name }) => name),
  ),
  pairs,
  matters: 5,
  gapAxis: 'Yards farther with the dearer head',
  priceAxis: 'Difference of price in pounds, 11 April 2026',
  legend: 'Under 5 yards: too small to matter',
  ...rest,
});

export const priceExample: PriceInput = priceInputOf([
  pricedGap('Alder over Cedar', 230, [12, 7, 18]),
  pricedGap('Birch over Cedar', 150, [8, 2, 14]),
]);
