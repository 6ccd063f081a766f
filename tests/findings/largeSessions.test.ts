import { expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import { leaveOut } from '../../src/findings/leaveOut.ts';
import { seededRandom, shuffled } from '../../src/stats/random.ts';
import { inputFor, yd, type Swing } from './sessions.ts';

/** Minutes on a machine that is busy with other things; what takes time by the square takes hours. */
const long = 240_000;

/** One golfer who hits two heads in rounds; `a` carries ten yards farther. */
function manySwings(rows: number): readonly Swing[] {
  const random = seededRandom('large sessions');
  return Array.from({ length: rows / 2 }, (_, round) =>
    shuffled(['a', 'b'], random).map((contender): Swing => ({
      contender,
      round: round + 1,
      values: { carry: yd((contender === 'a' ? 240 : 230) + 6 * random.normal()) },
    })),
  ).flat();
}

test(
  '200,000 shots are analysed, none left aside',
  () => {
    const { contenders, design, metrics } = analyse(inputFor(manySwings(200_000)), []);
    expect(contenders.map(({ shots }) => shots)).toEqual([100_000, 100_000]);
    expect([design.order, design.rounds]).toEqual(['rotation-order-changed', 100_000]);
    const [pair] = metrics[0]?.pairs ?? [];
    expect([pair?.verdict, pair?.credit]).toEqual(['clear', 'contender']);
    expect(pair?.holds.map(({ state }) => state)).toEqual(['agrees', 'agrees']);
    expect(Math.abs(Math.abs(pair?.estimate ?? NaN) - yd(10))).toBeLessThan(yd(0.2));
  },
  long,
);

test(
  'each of 60,000 shots is left out in turn, readings far out among them',
  () => {
    const random = seededRandom('left out of many');
    const valuesAround = (mean: number): readonly number[] =>
      Array.from({ length: 30_000 }, (_, at) => mean + (at % 10 === 0 ? 60 : 6) * random.normal());
    const samples = [
      { contender: 'a', values: valuesAround(240) },
      { contender: 'b', values: valuesAround(230) },
    ];
    const gap = {
      a: 'a',
      b: 'b',
      estimate: 10,
      standardError: 0.1,
      df: 50_000,
      statistic: 100,
      p: 0,
      ci: [9.8, 10.2] as const,
      level: 0.95,
      method: 'welch' as const,
    };
    const found = leaveOut(gap, samples, 0.95, 5);
    expect(found?.restsOnOneShot).toBe(false);
    const [low = NaN, high = NaN] = found?.range ?? [];
    expect(high - low).toBeGreaterThan(0);
    expect(high - low).toBeLessThan(0.05);
  },
  long,
);
