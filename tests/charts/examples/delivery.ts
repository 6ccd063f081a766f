import type { DeliveryInput, DeliveryRow, PricedDelivery } from '../../../src/charts/deliveryInput.ts';
import { exampleWords } from './heads.ts';

export const deliveryRow = (
  measure: string,
  [a, b]: readonly [readonly [string, number], readonly [string, number]],
  [estimate, low, high]: readonly [number, number, number],
  answer: PricedDelivery['answer'],
  words: string,
): PricedDelivery => ({
  kind: 'judged',
  acrossToo: false,
  measure,
  answer,
  a: { label: a[0], index: a[1] },
  b: { label: b[0], index: b[1] },
  estimate,
  low,
  high,
  sentence: `${measure}: ${answer.replace('-', ' ')}.`,
  numbers: words,
  printed: { estimate: String(Math.abs(estimate)), low: String(Math.abs(low)), high: String(Math.abs(high)) },
});

const ends = [
  ['Alder', 0],
  ['Cedar', 2],
] as const;

export const deliveryRows: readonly DeliveryRow[] = [
  deliveryRow('Club speed', ends, [2, -1, 5], 'cannot-tell', '−0.4 to 1.9 mph, worth −1 to 5 yards.'),
  deliveryRow('Angle of attack', ends, [0.5, -1, 2], 'same', '−0.6 to 1.1 degrees, worth −1 to 2 yards.'),
  deliveryRow('Path', ends, [-4, -7, -1], 'different', '1 to 4 degrees, worth 1 to 7 yards.'),
  {
    kind: 'not-judged',
    measure: 'Strike height',
    a: { label: 'Alder', index: 0 },
    b: { label: 'Cedar', index: 2 },
    sentence: 'Strike height: no price.',
    numbers: 'Likely between 2 mm lower and 5 mm higher.',
  },
];

export const deliveryInputOf = (
  rows: readonly DeliveryRow[],
  rest: Partial<DeliveryInput> = {},
): DeliveryInput => ({
  ...exampleWords(
    'delivery',
    'The head or the swing?',
    'Differences of delivery between heads',
    rows.map(({ measure }) => measure),
  ),
  rows,
  margin: 2.5,
  axis: 'yards it could be worth',
  legend: 'Worth under 2.5 yards: the same swing, as far as it matters',
  ...rest,
});
