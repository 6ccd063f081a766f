import { gapWords } from './gaps.ts';
import { exampleWords } from './heads.ts';
import type { DeliveryInput, DeliveryRow, PricedDelivery } from '../../../src/charts/deliveryDrawing.ts';

export const deliveryRow = (
  measure: string,
  [a, b]: readonly [string, string],
  [estimate, low, high]: readonly [number, number, number],
  judgement: PricedDelivery['judgement'],
): PricedDelivery => ({
  kind: 'judged',
  acrossToo: false,
  measure,
  judgement,
  name: `${measure}: ${a} and ${b}`,
  answer: judgement.replace('-', ' '),
  open: false,
  estimate,
  low,
  high,
  printed: { estimate: String(Math.abs(estimate)), low: String(Math.abs(low)), high: String(Math.abs(high)) },
});

const ends = ['Alder', 'Cedar'] as const;

export const deliveryRows: readonly DeliveryRow[] = [
  deliveryRow('Club speed', ends, [2, -1, 5], 'cannot-tell'),
  deliveryRow('Angle of attack', ends, [0.5, -1, 2], 'same'),
  deliveryRow('Path', ends, [4, 1, 7], 'different'),
  {
    kind: 'not-judged',
    measure: 'Strike height',
    sentence: 'Strike height: no price. Likely between 2 mm lower and 5 mm higher.',
  },
];

export const deliveryInputOf = (
  rows: readonly DeliveryRow[],
  rest: Partial<DeliveryInput> = {},
): DeliveryInput => ({
  ...exampleWords(
    'Differences of delivery between heads',
    rows.map(({ measure }) => measure),
  ),
  rows,
  margin: 2.5,
  unit: 'yards',
  bandWords: 'the same swing: worth under 2.5 yards',
  ends: { left: 'in favour of the second', right: 'in favour of the first' },
  foot: 'What the difference in the swing could be worth in carry.',
  key: gapWords.key,
  ...rest,
});
