import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/findings/analyse.ts';
import type { PairFindings } from '../../src/findings/findings.ts';
import { inputFor, inTurn, yd, type Swing } from './sessions.ts';

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
