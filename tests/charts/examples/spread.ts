import { exampleWords, heads } from './heads.ts';
import type { SpreadInput } from '../../../src/charts/spread.ts';

/** Invented spreads in carry and side. */
export const spreadInputOf = (names: readonly string[], rest: Partial<SpreadInput> = {}): SpreadInput => ({
  ...exampleWords('Spread of three driver heads', names),
  groups: ['Carry: cannot tell.', 'Side: cannot tell which is tighter.'].map((heading, group) => ({
    heading,
    rows: names.map((label, index) => {
      const spread = 6 + 2 * index + 4 * group;
      return {
        contender: { label, index },
        spread,
        interval: { low: spread * 0.7, high: spread * 1.8 },
        figure: String(spread),
        words: `likely ${(spread * 0.7).toFixed(0)} to ${(spread * 1.8).toFixed(0)}`,
      };
    }),
  })),
  key: { ring: 'standard deviation', bar: 'likely range' },
  axis: 'Standard deviation in yards: two shots in three land within so much of the average',
  ...rest,
});

export const spreadExample: SpreadInput = spreadInputOf(heads.slice(0, 3));
