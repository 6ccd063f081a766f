import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import type { PairFindings } from '../../src/findings/findings.ts';
import { seededRandom, shuffled } from '../../src/stats/random.ts';
import { inputFor, inTurn, oneAfterAnother, yd, type Swing } from './sessions.ts';

/** Forty deviations with a standard deviation of about 2, in no order that drifts. */
const cell = (mean: number, n = 40, size = 2.8): number[] =>
  Array.from({ length: n }, (_, index) => mean + size * Math.sin(index * 2.399963));
const golfers = (gaps: readonly number[], n?: number): Swing[] =>
  gaps.flatMap((gap, index) => inTurn({ a: cell(200 + gap, n), b: cell(200, n).toReversed() }, `g${index}`));
function pairOf(swings: readonly Swing[], options: Parameters<typeof inputFor>[1] = {}): PairFindings {
  const [pair] = analyse(inputFor(swings, options), []).metrics[0]?.pairs ?? [];
  if (pair === undefined) throw new Error('no pair');
  return pair;
}

describe('nothing that matters, over two to five golfers (5 yards matter)', () => {
  test('is said where it is so for each of them', () => {
    const pair = pairOf(golfers([0.3, -0.2, 0]));
    expect([pair.verdict, pair.overlays.includes('golfers-apart')]).toEqual(['level', false]);
    const small = pairOf(golfers([2, 2.3, 2.1]));
    expect([small.verdict, small.overlays.includes('golfers-apart')]).toEqual(['small', false]);
  });

  test('is not said of ten yards more for one and twelve less for another', () => {
    const pair = pairOf(golfers([10, -12, 2]));
    const [lower = NaN, upper = NaN] = pair.ci ?? [];
    expect([lower > yd(-5), lower < 0, upper > 0, upper < yd(5)]).toEqual([true, true, true, true]);
    expect([pair.verdict, pair.status]).toEqual(['too-close', 'cannot-tell']);
    expect(pair.overlays).toContain('golfers-apart');
    expect(pair.hittersDiffer).toHaveLength(3);
    expect(pair.byHitter.map(({ estimate }) => Math.round(estimate / yd(1)))).toEqual([10, -12, 2]);
  });

  test('nor where a golfer alone may have a difference that matters', () => {
    const pair = pairOf([
      ...golfers([0, 0]),
      ...inTurn({ a: cell(200, 12, 9), b: cell(200, 12, 9).toReversed() }, 'wild'),
    ]);
    expect([pair.verdict, pair.hittersDiffer]).toEqual(['too-close', []]);
    expect(pair.overlays).toContain('golfers-apart');
  });

  test('a small difference on average stays a difference that may be small', () => {
    const pair = pairOf(golfers([7, -1.5]));
    expect(pair.ci?.[0]).toBeGreaterThan(0);
    expect(pair.ci?.[1]).toBeLessThan(yd(5));
    expect([pair.verdict, pair.status]).toEqual(['maybe-small', 'size-uncertain']);
  });

  test('six golfers speak of golfers like these, and are judged as before', () => {
    const pair = pairOf(golfers([0.3, -0.2, 0, 0.1, -0.1, 0.2]));
    expect([pair.verdict, pair.method]).toEqual(['level', 'hitter-model']);
  });

  test('a difference that matters is untouched', () => {
    const pair = pairOf(golfers([20, 11]));
    expect([pair.verdict, pair.overlays.includes('golfers-apart')]).toEqual(['clear', false]);
  });

  test('with the left-out shots counted the same rule holds', () => {
    const swings = golfers([0.2, -0.2]).map((swing, index) => ({ ...swing, leftOut: index === 9 }));
    expect(pairOf(swings).withLeftOut?.verdict).toBe('level');
    const apart = golfers([10, -10]).map((swing, index) => ({ ...swing, leftOut: index === 9 }));
    expect(pairOf(apart).withLeftOut?.verdict).toBe('too-close');
  });
});

describe('six golfers or more', () => {
  const random = seededRandom('six golfers');
  const normal = (n: number, mean: number, sd: number): number[] =>
    Array.from({ length: n }, () => mean + sd * random.normal());
  const lists = (gap: number, n = 8, base = 200): Readonly<Record<string, number[]>> => ({
    a: normal(n, base + gap, 4),
    b: normal(n, base, 4),
  });
  const turned = ({ a = [], b = [] }: Readonly<Record<string, number[]>>): Record<string, number[]> => ({
    b,
    a,
  });
  const designOf = (swings: readonly Swing[]): { order: string; credit: string; seen: string } => {
    const findings = analyse(inputFor(swings, { contenders: ['a', 'b'] }), []);
    const [pair] = findings.metrics[0]?.pairs ?? [];
    return { order: findings.design.order, credit: pair?.credit ?? '', seen: pair?.verdict ?? '' };
  };

  test('whose orders even out are counterbalanced, and credited', () => {
    const swings = Array.from({ length: 8 }, (_, index) => {
      const own = lists(12);
      return oneAfterAnother(index % 2 === 0 ? own : turned(own), `g${index}`);
    }).flat();
    expect(designOf(swings)).toMatchObject({ order: 'counterbalanced', credit: 'contender' });
  });

  test('who all hit a first are as open as one', () => {
    const swings = Array.from({ length: 8 }, (_, index) => oneAfterAnother(lists(12), `g${index}`)).flat();
    expect(designOf(swings)).toMatchObject({ order: 'one-after-another', credit: 'open' });
  });

  test('of whom six hit a first and two b are open: the lever is a quarter', () => {
    // N 16, places 8 apart: lever 8/15 each; (6 - 2)/8 of it is 0.27
    const swings = Array.from({ length: 8 }, (_, index) => {
      const own = lists(12);
      return oneAfterAnother(index < 6 ? own : turned(own), `g${index}`);
    }).flat();
    expect(designOf(swings)).toMatchObject({ order: 'one-after-another', credit: 'open' });
  });

  test('fewer golfers whose orders even out stay open: a drift of each one own would not stand in the interval', () => {
    const swings = Array.from({ length: 4 }, (_, index) => {
      const own = lists(12);
      return oneAfterAnother(index % 2 === 0 ? own : turned(own), `g${index}`);
    }).flat();
    expect(designOf(swings)).toMatchObject({ order: 'one-after-another', credit: 'open' });
  });

  test('one short sitting of a seventh does not open the answer of six', () => {
    const swings = [
      ...Array.from({ length: 6 }, (_, index) => inTurn(lists(12), `g${index}`)).flat(),
      ...oneAfterAnother(lists(12, 3), 'short'),
    ];
    expect(designOf(swings)).toEqual({ order: 'rotation-same-order', credit: 'contender', seen: 'clear' });
  });

  test('fully shuffled, each on their own, are credited in 38 of 40 tests at least', () => {
    const credited = Array.from({ length: 40 }, () => {
      const swings = Array.from({ length: 8 }, (_, index) =>
        shuffled(inTurn({ a: normal(8, 208, 8), b: normal(8, 200, 8) }, `g${index}`), random),
      ).flat();
      return designOf(swings).credit;
    }).filter((credit) => credit === 'contender');
    expect(credited.length).toBeGreaterThanOrEqual(38);
  });

  test('of whom one hit far too few with one: the golfer is left out, and the rest are judged as the five they are', () => {
    const swings = [
      ...Array.from({ length: 5 }, (_, index) => inTurn(lists(12, 8, 190 + 5 * index), `g${index}`)).flat(),
      ...inTurn({ a: normal(8, 300, 4), b: normal(2, 200, 4) }, 'thin'),
    ];
    const findings = analyse(inputFor(swings), []);
    const [carry] = findings.metrics;
    expect(carry?.golfersLeftOut).toEqual(['thin']);
    expect(findings.design).toMatchObject({ hitters: 6, unit: 'shot' });
    const [pair] = carry?.pairs ?? [];
    expect(pair).toMatchObject({ method: 'hitters-alike', verdict: 'clear' });
    expect(pair?.byHitter.map(({ hitter }) => hitter)).toEqual(['g0', 'g1', 'g2', 'g3', 'g4']);
    expect(pair?.overlays).toContain('few-hitters');
    expect(pair?.estimate).toBeLessThan(yd(20));
  });

  test('of seven, only the thin average is left out', () => {
    const swings = [
      ...Array.from({ length: 6 }, (_, index) => inTurn(lists(12), `g${index}`)).flat(),
      ...inTurn({ a: normal(8, 300, 4), b: normal(2, 200, 4) }, 'thin'),
    ];
    const [carry] = analyse(inputFor(swings), []).metrics;
    expect([carry?.golfersLeftOut, carry?.cellsLeftOut, carry?.pairs[0]?.method]).toEqual([
      [],
      1,
      'hitter-model',
    ]);
  });
});
