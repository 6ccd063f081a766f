import { exampleWords, heads } from './heads.ts';
import type { GapWords } from '../../../src/charts/gapWords.ts';
import type { GapRow } from '../../../src/charts/gapRow.ts';
import type { PooledRowsInput } from '../../../src/charts/pooledRows.ts';
import type { PairedGaps, WithAndWithoutInput } from '../../../src/charts/withAndWithout.ts';
import type { YardsInput } from '../../../src/charts/yards.ts';

/** Words of a chart of gaps whose band is 5 yards. */
export const gapWords: Omit<GapWords, 'ends'> = {
  matters: 5,
  bandWords: 'too small to matter, under 5 yards',
  unit: 'yards',
  foot: 'Difference in average carry. Likely ranges: 95% confidence, all three pairs together.',
  key: {
    ring: 'best estimate',
    bar: 'likely range',
    thick: 'large enough to matter',
    open: null,
    filled: true,
  },
};

const [alder, birch] = [
  { label: 'Alder', index: 0 },
  { label: 'Birch', index: 1 },
] as const;

/** A gap with its words; counted towards the one that had more. */
export const exampleGap = (
  name: string,
  estimate: number | null,
  low: number,
  high: number,
  [first, second]: readonly [string, string] = ['Alder', 'Birch'],
  words?: string,
): GapRow => ({
  name,
  estimate,
  interval: { low, high },
  printed:
    words !== undefined && estimate !== null
      ? null
      : {
          estimate: estimate === null ? '' : String(Math.abs(estimate)),
          low: String(Math.abs(low)),
          high: String(Math.abs(high)),
        },
  figure: estimate === null ? '' : String(Math.abs(estimate)),
  words:
    words ??
    (low < 0 && high > 0
      ? `anything from ${high} yards for ${first} to ${-low} for ${second}`
      : `likely ${Math.abs(low)} to ${Math.abs(high)} yards`),
});

/** Invented gaps of as many golfers, from one that loses to ones that gain. */
export const golferRowsOf = (count: number, rest: Partial<PooledRowsInput> = {}): PooledRowsInput => {
  const each = Array.from({ length: count }, (_, index) => {
    const gap = 2 * ((index * 5) % 7) - 3;
    return exampleGap(`Golfer ${index + 1}, ${84 + 3 * index} mph`, gap, gap - 6, gap + 6);
  });
  return {
    ...exampleWords(
      `Gaps of ${count} golfers`,
      each.map(({ name }) => name),
    ),
    a: alder,
    b: birch,
    each,
    counted: 'golfers',
    pooled: exampleGap(`All ${count}`, 4, 1, 7),
    another: exampleGap(
      'Another golfer',
      null,
      -4,
      12,
      undefined,
      'anything from 12 yards for Alder to 4 for Birch',
    ),
    ...gapWords,
    ahead: 'farther',
    ...rest,
  };
};

export const yardsExample: YardsInput = {
  ...gapWords,
  ...exampleWords('Parts of the gap between Alder and Birch', ['Parts']),
  question: 'Where do the yards come from?',
  a: alder,
  b: birch,
  measured: exampleGap('Carry, as measured', 9, 2, 16),
  parts: [
    exampleGap('Ball speed', 6, 3, 9),
    exampleGap('Launch angle', 2, 0.5, 4),
    exampleGap('Spin', null, -1, 4, undefined, 'not settled: the two sets of figures disagree'),
    exampleGap('Direction', -1, -2, 0.5, undefined, 'anything from 2 yards for Birch to 1 for Alder'),
    { name: 'Air', estimate: null, interval: null, printed: null, figure: '', words: 'the same for both' },
  ],
  rest: exampleGap('Not explained', 1, -6, 8, undefined, 'anything from 8 yards for Alder to 6 for Birch'),
  ahead: 'farther',
};

export const pairedGaps = (names: readonly string[]): readonly PairedGaps[] =>
  names.flatMap((a, first) =>
    names.slice(first + 1).map((b, step) => {
      const gap = 9 - 3 * first - 2 * step;
      return {
        indices: [first, first + step + 1] as const,
        open: false,
        sentence: `${a} farther than ${b} either way, size unsure.`,
        all: exampleGap('All 38 shots', gap - 2, gap - 11, gap + 7, [a, b]),
        kept: exampleGap('Without the two left out', gap, gap - 7, gap + 7, [a, b]),
      };
    }),
  );

export const withAndWithoutOf = (
  pairs: readonly PairedGaps[],
  rest: Partial<WithAndWithoutInput> = {},
): WithAndWithoutInput => ({
  ...exampleWords(
    'Gaps with and without two shots',
    pairs.map(({ indices }) => indices.join(' and ')),
  ),
  pairs,
  ...gapWords,
  ends: { left: 'named second farther', right: 'named first farther' },
  leftOut: 2,
  ...rest,
});

export const withAndWithoutExample: WithAndWithoutInput = withAndWithoutOf(pairedGaps(heads.slice(0, 3)));
