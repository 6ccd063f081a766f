import { exampleWords } from './heads.ts';
import type { LuckInput } from '../../../src/charts/luck.ts';

export const luckInputOf = (
  average: number,
  upTo: number,
  gap: number,
  unit = 'yards',
  rest: Partial<LuckInput> = {},
): LuckInput => ({
  ...exampleWords('Three equal heads and the three tested', ['Luck']),
  luck: { average, upTo, words: `By luck: about ${average} ${unit}, now and then ${upTo}` },
  seen: { gap, words: [`Alder and Cedar: ${gap} ${unit} apart`, 'Clear difference'] },
  roundIn: 1,
  axis: `Gap between the farthest head and the shortest, ${unit}`,
  ...rest,
});

export const luckExample: LuckInput = luckInputOf(3, 6, 12);
