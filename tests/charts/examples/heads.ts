import type { ChartWords } from '../../../src/charts/madeChart.ts';

export const heads = ['Alder', 'Birch', 'Cedar', 'Dogwood', 'Elm', 'Fir'] as const;

export const longNames = [
  'Northern Pintail',
  'Hollow Oak Forged Mk II',
  'Wintergreen Extra Long Name',
  'Sassafrasandbuttonwood Z',
  'E',
  'F',
] as const;

/** Words every example needs, with a table of as many rows as there are `rows`. */
export const exampleWords = (subject: string, rows: readonly string[]): ChartWords => ({
  about: { of: 'metric', metric: 'carry' },
  finding: 'What the chart shows',
  subject,
  found: ['What was found.'],
  signs: ['What the signs mean.'],
  description: 'What the chart shows, in sentences.',
  numbers: 'what the table holds',
  table: { caption: 'Numbers', head: ['Row'], rows: rows.map((row) => [row]) },
});

/** Standard normal quantiles in a scrambled but fixed order: invented values that crowd as shots do. Hastings' approximation. */
export const scattered = (count: number, turn: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => {
    const share = (((index * turn) % count) + 0.5) / count;
    const tail = Math.min(share, 1 - share);
    const t = Math.sqrt(-2 * Math.log(tail));
    const size = t - (2.30753 + 0.27061 * t) / (1 + 0.99229 * t + 0.04481 * t * t);
    return share < 0.5 ? -size : size;
  });
