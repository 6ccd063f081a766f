import { exampleWords, heads, scattered } from './heads.ts';
import type { OrderInput } from '../../../src/charts/orderDrawing.ts';

/** As many invented shots in rotation, one in eleven left out, falling off by a yard in ten shots. */
export const orderInputOf = (
  names: readonly string[],
  count: number,
  rest: Partial<OrderInput> = {},
): OrderInput => {
  const noise = scattered(count, 17);
  return {
    ...exampleWords('Carry of every shot in the order it was hit', names),
    contenders: names.map((label, index) => ({ label, index })),
    shots: noise.map((value, place) => ({
      number: place + 1,
      value: Math.round(10 * (226 + 5 * (place % names.length) - 0.1 * place + 6 * value)) / 10,
      contender: place % names.length,
      leftOut: place % 11 === 5,
    })),
    trends: names.slice(0, 3).map((label, contender) => ({
      contender,
      from: { number: contender + 1, value: 226 + 5 * contender },
      to: { number: count - names.length + contender + 1, value: 226 + 5 * contender - 0.1 * count },
      words: `${label}: carry fell by about 1 yard in ten shots, likely between almost nothing and 3`,
    })),
    roundIn: 1,
    axis: 'Carry in yards',
    numberAxis: 'Shot number',
    leftOut: 'Hollow, struck through: left out of the averages',
    recorded: count,
    ...rest,
  };
};

export const orderExample: OrderInput = orderInputOf(heads.slice(0, 3), 36);
